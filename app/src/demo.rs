//! A job to open the page with until the generator deals one: a 40-gallon heater whose lower element is open.
//! Invented throughout.

use bench::{Job, Licence, Mode};
use plant::climate::Climate;
use plant::household::{Account, Answer, HouseholdKind, HowMuch, Meddler, Symptom};
use plant::{HeaterModel, Home, Level, Setting};
use quantity::{Seconds, Volume};

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
    Home::sound(Setting {
        heater: HeaterModel::Plain40,
        household: HouseholdKind::Family,
        climate: Climate::MillValley,
        day: 40,
    })
}
