//! A job to open the page with until the generator deals one: a 40-gallon heater whose lower element is open.
//! Invented throughout.

use bench::{Job, Licence, Mode};
use plant::climate::Climate;
use plant::household::{Account, Answer, HouseholdKind, HowMuch, Meddler, Symptom};
use plant::{
    Breaker, Circuit, Handle, HeaterModel, Home, Level, Plant, Plumbing, ReliefValve, Service, Setting,
    Vessel,
};
use quantity::{Amps, Kelvins, Ohms, Pressure, Seconds, Temperature, Volts, Volume};

/// How a journal or a link names it.
pub const NAME: &str = "demo";

/// The job.
pub fn job() -> Job {
    let mut home = home();
    home.plant.elements[Level::Lower.index()].open = true;
    Job {
        home,
        account: account(),
        licence: Licence::Maintenance,
        mode: Mode::Coached,
        traps: Vec::new(),
        starts_at: Seconds::hours(8.5),
        limit_minutes: None,
    }
}

fn account() -> Account {
    let runs_out = Answer::HowMuch(HowMuch::RunsOut { after: Seconds::minutes(4.0) });
    Account {
        symptom: Symptom::RunsOut,
        opening: vec![runs_out, Answer::LastGood { days: Some(6) }],
        answers: vec![
            Answer::LastGood { days: Some(6) },
            runs_out,
            Answer::TooHot { hottest: None },
            Answer::Tripped { breaker: 0, button: 0, by: Meddler::Nobody },
            Answer::WhoTouched { who: Meddler::Nobody, dial: false },
            Answer::Water { a_day: Volume(0.0), at_relief: false },
            Answer::NoiseSmell { burnt: false },
            Answer::People { adults: 2, children: 2, demand: 1.0 },
            Answer::EveryTap,
            Answer::Bill { factor: 0.9 },
            Answer::Age { years: 9 },
            Answer::OtherSupply { known: false },
        ],
    }
}

fn home() -> Home {
    let setting = Setting {
        heater: HeaterModel::Plain40,
        household: HouseholdKind::Family,
        climate: Climate::MillValley,
        day: 40,
    };
    let plate = setting.heater.plate();
    let breaker = |feeds, rating| Breaker {
        feeds,
        label: feeds,
        rating: Amps(rating),
        handle: Handle::On,
        poles: Default::default(),
        heat: [0.0; 2],
        locked: false,
        tagged: false,
    };
    let dial = Temperature::fahrenheit(120.0);
    let thermostat = |d| plant::Thermostat::sound(dial, Kelvins::fahrenheit(d));
    let plant = Plant {
        plate,
        service: Service {
            kind: plant::supply::ServiceKind::Split240,
            leg: Volts(120.0),
            impedance: Ohms(0.01),
        },
        panel: plant::Panel {
            breakers: vec![
                breaker(Circuit::Range, 50.0),
                breaker(Circuit::Dryer, 30.0),
                breaker(Circuit::Heater, 30.0),
            ],
        },
        wiring: plant::Wiring::factory(false),
        elements: [plant::Element::sound(plate.element); 2],
        thermostats: [thermostat(15.0), thermostat(10.0)],
        limit: plant::Limit {
            trip: Temperature::fahrenheit(170.0),
            reset_below: Temperature::fahrenheit(120.0),
            body: dial,
            tripped: false,
            poles: Default::default(),
        },
        insulated: [true; 2],
        cable_coupling: 0.0,
        tank: solver::tank::Tank::of_volume(plate.content().get(), plate.height.get())
            .map(|tank| tank.full_at(49.0))
            .unwrap_or_else(|_| unreachable!("the plate has a size")),
        vessel: Vessel { dip_tube: plant::DipTube::Whole, shell_hole: 0.0, sediment: Volume(0.0) },
        plumbing: Plumbing {
            main: Pressure::psi(60.0),
            closed: false,
            inlet: Temperature::fahrenheit(50.0),
            cold_valve: 1.0,
            taps: [0.0; 4],
            drain_valve: 0.0,
            hose: false,
            relief: ReliefValve {
                opens_at: Pressure::psi(150.0),
                opens_hot: Temperature::fahrenheit(210.0),
                open: false,
                lever: false,
                weep: 0.0,
            },
            expansion: None,
            pressure: Pressure::psi(60.0),
            peak: Pressure::psi(60.0),
            on_floor: Volume(0.0),
        },
        room: Temperature::fahrenheit(68.0),
        clock: Seconds(0.0),
    };
    Home { setting, plant, demand: 1.0 }
}
