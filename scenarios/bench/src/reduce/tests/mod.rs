//! The door itself, tried on invented houses.

mod books;
mod cures;
mod exchange;
mod fold;
mod instruments;
mod judging;
mod loose;
mod mounts;
mod proving;
mod readings;
mod safety;
mod supplies;
mod waiting;
mod work;

use plant::climate::Climate;
use plant::home::{Home, Setting};
use plant::household::{Account, Answer, HouseholdKind, HowMuch, Meddler, Symptom};
use plant::{Circuit, End, Handle, HeaterModel, Level, Point, Screw, Wire};
use quantity::{Seconds, Temperature, Volts, Volume};

use crate::*;

/// A house with nothing wrong.
fn home() -> Home {
    Home::sound(Setting {
        heater: HeaterModel::Plain40,
        household: HouseholdKind::Family,
        climate: Climate::MillValley,
        day: 40,
        in_line: None,
        location: Default::default(),
    })
}

/// The same, with its whole tank cold, so that the upper thermostat calls.
fn cold_home() -> Home {
    let mut home = home();
    home.plant.tank = home.plant.tank_at(Temperature::celsius(12.0));
    home.plant.advance(Seconds::minutes(8.0));
    home
}

trait TankAt {
    fn tank_at(&self, temperature: Temperature) -> solver::tank::State;
}

impl TankAt for plant::Plant {
    fn tank_at(&self, temperature: Temperature) -> solver::tank::State {
        let tank =
            solver::tank::Tank::of_volume(self.plate.content().get(), self.plate.height.get()).unwrap();
        tank.full_at(temperature.to_celsius())
    }
}

/// What its people can tell.
fn account() -> Account {
    Account {
        symptom: Symptom::NoHot,
        manner: 0,
        opening: vec![],
        answers: vec![
            Answer::LastGood { days: Some(2) },
            Answer::HowMuch(HowMuch::Never),
            Answer::TooHot { hottest: None },
            Answer::Tripped { breaker: 0, button: 0, by: Meddler::Nobody },
            Answer::WhoTouched { who: Meddler::Nobody, dial: false },
            Answer::Water { a_day: Volume(0.0), at_relief: false },
            Answer::NoiseSmell { burnt: false, eggs: false, rusty: false },
            Answer::People { adults: 2, children: 2, demand: 1.0 },
            Answer::EveryTap { same: true },
            Answer::Bill { factor: 1.0 },
            Answer::Age { years: 6 },
            Answer::OtherSupply { known: false },
        ],
    }
}

fn job(home: Home, mode: Mode, traps: &[Trap]) -> Job {
    Job {
        home,
        account: account(),
        licence: Licence::Electrician,
        mode,
        traps: traps.to_vec(),
        hearsay: crate::Hearsay::HotBurns,
        kit: Kit::EXACT,
        starts_at: Seconds::hours(9.0),
        weekday: 2,
        limit_minutes: None,
    }
}

fn solo(home: Home) -> Session {
    Session::begin(job(home, Mode::Solo, &[]))
}

fn screw(screw: Screw) -> Point {
    Point::Screw(screw)
}

fn end(wire: Wire, side: u8) -> End {
    End { wire, side }
}

/// Does acts that must not be refused, and gives the last outcome.
fn doing(session: &mut Session, actions: &[Action]) -> Outcome {
    let mut last = None;
    for action in actions {
        let outcome = session.step(action);
        assert!(!matches!(outcome.shown, Shown::Refused { .. }), "{action:?}: {:?}", outcome.shown);
        last = Some(outcome);
    }
    last.unwrap()
}

fn uncover(level: Level) -> Vec<Action> {
    Cover::over(level).iter().map(|&which| Action::Cover { which, off: true }).collect()
}

fn meter(function: MeterFunction, red: Screw, black: Screw) -> Action {
    Action::Meter { function, red: screw(red), black: screw(black) }
}

fn volts(session: &mut Session, function: MeterFunction, red: Screw, black: Screw) -> Volts {
    match session.step(&meter(function, red, black)).shown {
        Shown::Meter { display: Display::Volts { volts } } => volts,
        other => panic!("{other:?}"),
    }
}

fn slot(session: &Session, circuit: Circuit) -> u32 {
    session.home.plant.panel.slot_of(circuit).unwrap() as u32
}

fn has(outcome: &Outcome, fact: fn(&Fact) -> bool) -> bool {
    outcome.facts.iter().any(fact)
}

/// Off and locked, everybody told.
fn lock_out(session: &mut Session) {
    let slot = slot(session, Circuit::Heater);
    doing(
        session,
        &[Action::TellHousehold, Action::Breaker { slot, on: false }, Action::Lock { slot, on: true }],
    );
    assert_eq!(session.home.plant.panel.breakers[slot as usize].handle, Handle::Off);
}

/// The whole procedure of making dead, H1 and H3 and the screws given.
fn make_dead(session: &mut Session, screws: &[Screw]) -> Outcome {
    use MeterFunction::LowVolts;
    let prove = Action::ProveMeter { on: KnownSource::Receptacle };
    doing(session, &[prove.clone(), Action::TellHousehold]);
    doing(session, &uncover(Level::Upper));
    doing(session, &uncover(Level::Lower));
    // The ground is proved while power is still on.
    let outcome = session.step(&meter(MeterFunction::Volts, Screw::H1, Screw::Shell));
    assert!(has(&outcome, |f| matches!(f, Fact::GroundProved { on: Screw::Shell })), "{outcome:?}");
    let slot = slot(session, Circuit::Heater);
    doing(session, &[Action::Breaker { slot, on: false }, Action::Lock { slot, on: true }]);
    doing(session, &[meter(LowVolts, Screw::H1, Screw::H3)]);
    for s in [Screw::H1, Screw::H3].iter().chain(screws) {
        let outcome = doing(session, &[meter(LowVolts, *s, Screw::Shell)]);
        assert!(has(&outcome, |f| matches!(f, Fact::TestedDead { .. })), "{s}: {outcome:?}");
    }
    session.step(&prove)
}

/// Cold off, hose on, drained to the last.
fn drained_to_empty(session: &mut Session) {
    let drained = [
        Action::ColdValve { opening: 0.0 },
        Action::Hose { on: true },
        Action::Drain { opening: 1.0 },
        Action::Tap { tap: plant::Tap::Bath, opening: 1.0 },
        Action::Wait { minutes: 60.0 },
    ];
    doing(session, &drained);
}
