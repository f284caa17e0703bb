//! Whether a part was faulty, and whether the new one belongs there: from the state, never from the fault's
//! name.

use plant::fault::PartKind;
use plant::heater::Rating;
use plant::{
    AnodeMetal, Circuit, Contact, DipTube, Element, ExpansionTank, Fixture, Level, Limit, Plant, Tap,
};
use quantity::{Amps, Constant, Pressure, Tag, Volts, Volume};

use super::senses;
use crate::action::NewPart;

quantity::constants! {
    /// Field pass band of an element, as fractions of V²/P.
    const PASS: Constant<(f64, f64)> = Constant::new("pass band of an element, shares of V²/P", (0.90, 1.12), "1", Tag::Memory("UL 1030 and common element data: +5 and -10 % of the watts, with the meter's own error"));
    /// Standard ratings.
    const STANDARD: Constant<[f64; 9]> = Constant::new("standard ratings of breakers", [15.0, 20.0, 25.0, 30.0, 35.0, 40.0, 45.0, 50.0, 60.0], "A", Tag::Memory("NEC 240.6(A)"));
    /// Two ratings this close are the same.
    const SAME: Constant = Constant::new("share within which two ratings are the same", 0.01, "1", Tag::Model("the rounding of a plate"));
    /// A stamp further from the supply than this is for another supply: between 208, 240 and 277 V lie 30 V.
    const OTHER_VOLTAGE: Constant<Volts> = Constant::of("stamp this far from the supply is for another", Volts(18.0), Tag::Model("between 208, 240 and 277 V lie 30 V"));
    /// Largest pressure a tank is to reach, 10 % under its relief valve.
    const UNDER_RELIEF: Constant = Constant::new("largest pressure a tank is to reach, over its relief valve's", 0.9, "1", Tag::Published("R. W. Griffith PE 2015, sizing of expansion tanks: 10 % under it"));
    /// Expansion from 50 to 140 °F.
    const EXPANSION: Constant = Constant::new("expansion of water from 50 to 140 °F", 0.01678, "1", Tag::Computed("IAPWS-97 densities"));
    /// Atmospheric pressure, for absolute pressures (standard atmosphere).
    const ATMOSPHERE: Constant<Pressure> = Constant::of("atmospheric pressure, for absolute pressures", Pressure::psi(14.7), Tag::Published("ISO 2533, rounded as the formula for expansion tanks prints it"));
    /// A charge this close to the static pressure will do.
    const CHARGE_NEAR: Constant<Pressure> = Constant::of("charge this close to the static pressure will do", Pressure::psi(5.0), Tag::CommonPractice);
    /// Least share of an expansion tank that its charge can give up, for a pressure near the relief valve's.
    const LEAST_SHARE: Constant =
        Constant::new("least share of an expansion tank that takes water", 0.05, "1", Tag::Model("keeps the size finite"));
    /// What a pressure regulator is set to.
    const HOUSE_PRESSURE: Constant<(f64, f64)> = Constant::new(
        "what a pressure regulator is set to",
        (40.0, 80.0),
        "psi",
        Tag::Memory("IPC and UPC: no more than 80 psi; 40 and more is common practice"),
    );
    /// What a mixing valve is set to.
    const MIXED: Constant<(f64, f64)> =
        Constant::new("what a mixing valve is set to", (105.0, 125.0), "°F", Tag::CommonPractice);
    /// A relief valve opens at this share of the working pressure or more.
    const RELIEF_SPAN: Constant =
        Constant::new("least opening of a relief valve, over the working pressure", 0.8, "1", Tag::CommonPractice);
}

/// Whether a value lies in a span, its ends with it.
pub(super) fn within(value: f64, (low, high): (f64, f64)) -> bool {
    (low..=high).contains(&value)
}

fn near(a: f64, b: f64) -> bool {
    (a - b).abs() <= SAME.get() * b.abs()
}

/// The rating is the plate's, or the plate's power made for the voltage that is really there.
fn fits(plant: &Plant, rating: Rating) -> bool {
    let plate = plant.plate.element;
    let right = near(rating.volts.get(), plate.volts.get())
        || rating.volts.near(senses::nominal(plant), OTHER_VOLTAGE.get());
    near(rating.watts.get(), plate.watts.get()) && right
}

fn element_faulty(plant: &Plant, level: Level) -> bool {
    let Some(element) = plant.elements.get(level.index()) else { return false };
    let made_for = element.stamp.volts.near(senses::nominal(plant), OTHER_VOLTAGE.get());
    let asked = fits(plant, element.stamp) && element.length == plant.plate.length;
    element_worn(plant, level) || !asked || !made_for
}

/// Faulty in itself, whatever its stamp.
fn element_worn(plant: &Plant, level: Level) -> bool {
    let Some(element) = plant.elements.get(level.index()) else { return false };
    let share = element.coil().get() / element.stamp.resistance().get();
    let bad = element.breaks() || element.leak.is_some() || element.scorched || element.is_crusted();
    bad || !(PASS.get().0..=PASS.get().1).contains(&share)
}

fn gasket_faulty(plant: &Plant, level: Level) -> bool {
    plant.elements.get(level.index()).is_some_and(|e| e.gasket.leak_diameter > 0.0)
}

fn thermostat_faulty(plant: &Plant, level: Level) -> bool {
    let Some(t) = plant.thermostats.get(level.index()) else { return false };
    let worn = t.cold_contact != Contact::Sound || t.hot_contact != Contact::Sound;
    t.stuck.is_some() || worn || t.is_off()
}

fn limit_faulty(limit: &Limit) -> bool {
    let worn = limit.poles.iter().any(|pole| *pole != Contact::Sound);
    worn || limit.welded.contains(&true) || limit.is_weak() || !limit.seated
}

fn sensor_faulty(plant: &Plant, level: Level) -> bool {
    use plant::controls::board::Lead;
    plant.board.is_some_and(|board| board.sensors[level.index()].lead != Lead::Whole)
}

fn cartridge_faulty(plant: &Plant, tap: Tap) -> bool {
    plant.plumbing.fixtures.get(tap as usize).is_some_and(Fixture::is_faulty)
}

/// What an expansion tank has to hold (trade sheet 5.7, published formula).
fn expansion_needed(plant: &Plant) -> Volume {
    let high = plant.plumbing.relief.opens_at.get() * UNDER_RELIEF.get() + ATMOSPHERE.get().get();
    let low = plant.plumbing.static_pressure().get() + ATMOSPHERE.get().get();
    let share = 1.0 - low / high.max(1.0);
    Volume(plant.plate.content().get() * EXPANSION.get() / share.max(LEAST_SHARE.get()))
}

fn expansion_right(plant: &Plant, tank: &ExpansionTank) -> bool {
    tank.volume >= expansion_needed(plant)
        && tank.charge.near(plant.plumbing.static_pressure(), CHARGE_NEAR.get())
}

/// Smallest and largest breaker of the heater: 125 % for a continuous load, 150 % and the next standard
/// size up (trade sheet 6.1, published).
fn breaker_span(plant: &Plant) -> (f64, f64) {
    let current = plant.plate.current();
    let [.., largest] = STANDARD.get();
    let most = plant::branch::allowed(current).map_or(largest, |(_, most)| most.get());
    (plant::branch::CONTINUOUS.get() * current.get(), most)
}

fn breaker_right(plant: &Plant, rating: Amps) -> bool {
    let (low, high) = breaker_span(plant);
    STANDARD.get().into_iter().any(|s| near(rating.get(), s)) && (low..=high).contains(&rating.get())
}

/// The part in place differs from a sound one.
pub(super) fn needed(plant: &Plant, part: PartKind) -> bool {
    match part {
        PartKind::UpperElement => element_faulty(plant, Level::Upper),
        PartKind::LowerElement => element_faulty(plant, Level::Lower),
        PartKind::UpperThermostat => thermostat_faulty(plant, Level::Upper),
        PartKind::LowerThermostat => thermostat_faulty(plant, Level::Lower),
        PartKind::Limit => limit_faulty(&plant.limit),
        PartKind::LowerLimit => plant.lower_limit.as_ref().is_some_and(limit_faulty),
        PartKind::Breaker => plant.panel.feeding(Circuit::Heater).is_some_and(|b| {
            let worn = b.poles.iter().any(|p| *p != Contact::Sound) || b.holds < 1.0;
            worn || b.tandem.is_some() || !breaker_right(plant, b.rating)
        }),
        PartKind::Connectors => {
            plant.wiring.feeders().iter().any(|wire| plant.wiring.conductor(*wire).creeps())
        }
        // Whole fuses of the wrong rating have to be changed as well.
        PartKind::Fuse => plant.in_line.is_some_and(|one| {
            one.is_fused()
                && (one.fuses.iter().any(|f| *f != Contact::Sound) || !breaker_right(plant, one.rating))
        }),
        PartKind::TimeSwitch => {
            let timer = |one: &plant::InLineBox| one.kind == plant::BoxKind::Timer;
            plant.in_line.filter(timer).is_some_and(|one| one.poles.iter().any(|p| *p != Contact::Sound))
        }
        PartKind::Anode => plant.vessel.anode_needed(),
        PartKind::DipTube => plant.vessel.dip_tube != DipTube::Whole,
        PartKind::UpperGasket => gasket_faulty(plant, Level::Upper),
        PartKind::LowerGasket => gasket_faulty(plant, Level::Lower),
        PartKind::ReliefValve => {
            let relief = &plant.plumbing.relief;
            relief.missing
                || relief.weep > 0.0
                || relief.blocked
                || relief.opens_at > plant.plate.working_pressure
        }
        PartKind::ExpansionTank => {
            let plumbing = &plant.plumbing;
            let works = |t: &ExpansionTank| !t.waterlogged && expansion_right(plant, t);
            plumbing.is_closed() && !plumbing.expansion.as_ref().is_some_and(works)
        }
        PartKind::UpperSensor => sensor_faulty(plant, Level::Upper),
        PartKind::LowerSensor => sensor_faulty(plant, Level::Lower),
        PartKind::Board => {
            plant.board.is_some() && [Level::Upper, Level::Lower].iter().any(|l| thermostat_faulty(plant, *l))
        }
        PartKind::Regulator => plant.plumbing.is_pressed(),
        PartKind::MixingValve => plant.plumbing.mixing.is_some_and(|valve| valve.seized.is_some()),
        PartKind::Cartridge => Tap::ALL.iter().any(|tap| cartridge_faulty(plant, *tap)),
        PartKind::DrainValve => plant.plumbing.drain_drip > 0.0 || plant.plumbing.drain_grit > 0.0,
        PartKind::Nipples => plant.plumbing.nipple_leak > 0.0 || plant.plumbing.traps.are_choked(),
        PartKind::Connections => plant.plumbing.reversed,
        PartKind::HotLine => plant.plumbing.hot_leak > 0.0,
        PartKind::PipeClips => plant.plumbing.tight > quantity::Metres(0.0),
        PartKind::ReturnCheck => plant.plumbing.recirculation.is_some_and(|r| !r.check),
        PartKind::PumpTimer => plant.plumbing.recirculation.is_some_and(|r| r.pump),
        PartKind::Heater => plant.vessel.shell_hole > 0.0,
    }
}

/// The part in place differs from a sound one, and this one puts that right: an element that is only of the
/// wrong rating or length is not helped by another like it.
pub(super) fn helps(plant: &Plant, part: &NewPart) -> bool {
    let other = match *part {
        NewPart::Element { level, rating, length, .. } => {
            let like = |old: &Element| {
                let stamp = old.stamp;
                near(stamp.watts.get(), rating.watts.get())
                    && near(stamp.volts.get(), rating.volts.get())
                    && old.length == length
            };
            element_worn(plant, level) || !plant.elements.get(level.index()).is_some_and(like)
        }
        NewPart::Cartridge { tap } => cartridge_faulty(plant, tap),
        _ => true,
    };
    other && needed(plant, part.kind())
}

/// A new heater stores what the old one did, is of its power and of the supply's voltage, and draws no more than the
/// old one or than breaker and wire carry for good.
pub(super) fn heater_suits(plant: &Plant, nominal: Volume, rating: Rating) -> bool {
    let stores = nominal.get() >= plant.plate.nominal.get() * (1.0 - SAME.get());
    let draws = plant::heater::Plate { element: rating, ..plant.plate }.current();
    let wire = plant.wiring.feeders().map(|wire| plant.wiring.conductor(wire).awg);
    let carried = |most: Amps| draws * plant::branch::CONTINUOUS.get() <= most;
    let breaker = plant.panel.feeding(Circuit::Heater).is_some_and(|b| carried(b.rating));
    let wires = wire.into_iter().filter_map(plant::branch::protects).all(carried);
    let no_more = draws.get() <= plant.plate.current().get() * (1.0 + SAME.get());
    stores && fits(plant, rating) && (no_more || (breaker && wires))
}

/// The new part belongs there: rating, voltage, size, mount.
pub(super) fn matches(plant: &Plant, part: &NewPart) -> bool {
    match *part {
        NewPart::Element { rating, length, mount, .. } => {
            let plate = &plant.plate;
            fits(plant, rating) && length == plate.length && mount == plate.mount
        }
        NewPart::Breaker { rating } | NewPart::Fuse { rating } => breaker_right(plant, rating),
        NewPart::Regulator { set } => within(set.to_psi(), HOUSE_PRESSURE.get()),
        NewPart::MixingValve { set } => within(set.to_fahrenheit(), MIXED.get()),
        // Where bacteria live on hydrogen a rod of magnesium feeds them on.
        NewPart::Anode { metal } => plant.vessel.bacteria <= 0.0 || metal == AnodeMetal::AluminiumZinc,
        NewPart::ReliefValve { opens_at } => {
            let working = plant.plate.working_pressure;
            opens_at <= working && opens_at.get() >= RELIEF_SPAN.get() * working.get()
        }
        NewPart::ExpansionTank { volume, charge } => {
            expansion_right(plant, &ExpansionTank { volume, charge, waterlogged: false })
        }
        NewPart::Thermostat { .. }
        | NewPart::Limit
        | NewPart::LowerLimit
        | NewPart::TimeSwitch
        | NewPart::Connectors
        | NewPart::DipTube
        | NewPart::Sensor { .. }
        | NewPart::Board
        | NewPart::Cartridge { .. }
        | NewPart::DrainValve
        | NewPart::Nipples
        | NewPart::Connections
        | NewPart::HotLine
        | NewPart::PipeClips
        | NewPart::ReturnCheck
        | NewPart::PumpTimer
        | NewPart::Gasket { .. } => true,
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Check case 22 (trade sheet 6.3, computed from the code's rules): the smallest ampacity, the smallest
    /// standard breaker and the largest one of a heater, in amperes.
    #[test]
    fn case_22_breakers_follow_the_plate() {
        let setting = plant::Setting {
            heater: plant::HeaterModel::Plain40,
            household: plant::household::HouseholdKind::Couple,
            climate: plant::climate::Climate::MillValley,
            day: 100,
            in_line: None,
            location: Default::default(),
        };
        let mut plant = plant::Home::sound(setting).plant;
        for (watts, least, smallest, largest) in
            [(4500.0, 23.44, 25.0, 30.0), (5500.0, 28.65, 30.0, 35.0), (6000.0, 31.25, 35.0, 40.0)]
        {
            plant.plate.element.watts = quantity::Watts(watts);
            let (low, high) = breaker_span(&plant);
            assert!(
                (low - least).abs() < 0.01 && (high - largest).abs() < 1e-9,
                "{watts} W: {low} to {high} A"
            );
            let fits: Vec<f64> =
                STANDARD.get().into_iter().filter(|s| breaker_right(&plant, Amps(*s))).collect();
            assert_eq!((fits.first(), fits.last()), (Some(&smallest), Some(&largest)), "{watts} W");
        }
    }
}
