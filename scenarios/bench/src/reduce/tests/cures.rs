//! Faults met through the instruments alone, and put right by hand.

use plant::fault::Parameters;
use plant::{FaultId, Tap};
use quantity::{Draw, Pressure};

use super::*;

fn with(id: FaultId) -> Home {
    let mut home = home();
    let fault = id.fault();
    let parameters = fault.complete(&Parameters::new(), &mut Draw::new(5, "cures")).unwrap();
    (fault.apply)(&parameters, &mut home);
    home
}

/// Highest pressure over a heat-up after a draw, on the gauge.
fn peak(session: &mut Session) -> f64 {
    let heat_up = [
        Action::Bucket { tap: Tap::Bath, volume: Volume::gallons(15.0) },
        Action::WaitForCutOut,
        Action::ReadGauge,
    ];
    match doing(session, &heat_up).shown {
        Shown::Pressure { highest, .. } => highest.to_psi(),
        other => panic!("{other:?}"),
    }
}

/// Trade sheet, F45: 135 psi and more after a heat-up with no draw; an expansion tank ends it (5.7).
#[test]
fn an_expansion_tank_takes_the_pressure() {
    let mut session = solo(with(FaultId::F45));
    doing(&mut session, &[Action::TellHousehold, Action::Gauge { on: true }]);
    let before = peak(&mut session);
    assert!(before >= 135.0, "{before}");
    let main = session.home.plant.plumbing.main;
    let part = NewPart::ExpansionTank { volume: Volume::gallons(4.4), charge: main };
    let fitted = doing(
        &mut session,
        &[
            Action::ColdValve { opening: 0.0 },
            Action::Tap { tap: Tap::Laundry, opening: 1.0 },
            Action::Replace { part },
        ],
    );
    assert_eq!(fitted.harms, []);
    assert!(has(&fitted, |f| matches!(f, Fact::Changed { matches: true, needed: true, .. })), "{fitted:?}");
    doing(
        &mut session,
        &[
            Action::Tap { tap: Tap::Laundry, opening: 0.0 },
            Action::ColdValve { opening: 1.0 },
            Action::Gauge { on: false },
            Action::Gauge { on: true },
        ],
    );
    let after = peak(&mut session);
    assert!(after < 110.0, "{after}");
}

/// The same with the street still on: water all over the place.
#[test]
fn a_pipe_opened_under_pressure_floods() {
    let mut session = solo(with(FaultId::F45));
    let part = NewPart::ExpansionTank { volume: Volume::gallons(2.0), charge: Pressure::psi(60.0) };
    let outcome = doing(&mut session, &[Action::TellHousehold, Action::Replace { part }]);
    assert!(outcome.harms.iter().any(|h| matches!(h, person::Harm::Flood { .. })), "{outcome:?}");
}

/// The regulator sits before the heater's valve: it comes out only with the main shut and the pressure let down.
/// Common practice, no source.
#[test]
fn a_regulator_is_changed_with_the_main_shut() {
    let mut session = solo(with(FaultId::F46));
    let regulator = Action::Replace { part: NewPart::Regulator { set: Pressure::psi(55.0) } };
    let refused = |session: &mut Session| match session.step(&regulator).shown {
        Shown::Refused { why } => why,
        other => panic!("{other:?}"),
    };
    let tap = |opening| Action::Tap { tap: Tap::Laundry, opening };
    let main = |opening| Action::MainValve { opening };
    let two = Action::Wait { minutes: 2.0 };
    doing(&mut session, &[Action::TellHousehold, Action::ColdValve { opening: 0.0 }, tap(1.0), two.clone()]);
    assert_eq!(refused(&mut session), Refusal::MainOpen);
    doing(&mut session, &[tap(0.0), Action::ColdValve { opening: 1.0 }, two.clone(), main(0.5)]);
    assert_eq!(refused(&mut session), Refusal::MainOpen);
    doing(&mut session, &[main(0.0)]);
    assert_eq!(refused(&mut session), Refusal::UnderPressure);
    doing(&mut session, &[tap(1.0), two.clone()]);
    let fitted = doing(&mut session, std::slice::from_ref(&regulator));
    assert_eq!((fitted.shown, fitted.harms), (Shown::Done, vec![]));
    doing(&mut session, &[main(1.0), two.clone(), tap(0.0), two]);
    let psi = session.home.plant.plumbing.pressure.to_psi();
    assert!((50.0..60.0).contains(&psi), "{psi}");
}

/// With the main shut no tap gives anything from the street, on either side, and the meter's dial stands still.
#[test]
fn a_shut_main_leaves_the_house_dry() {
    let mut session = solo(home());
    // The lowest: what stands in the pipes runs out there.
    let lowest = Action::Tap { tap: Tap::Laundry, opening: 1.0 };
    let watch = |session: &mut Session| match doing(session, &[Action::ReadWaterMeter]).shown {
        Shown::DoneWith { sights } => matches!(sights[..], [Sight::WaterMeter { turning: true, .. }]),
        other => panic!("{other:?}"),
    };
    doing(&mut session, &[Action::TellHousehold, lowest]);
    assert!(watch(&mut session));
    doing(&mut session, &[Action::MainValve { opening: 0.0 }]);
    assert!(!watch(&mut session));
    let again = session.step(&Action::MainValve { opening: 0.0 }).shown;
    assert_eq!(again, Shown::Refused { why: Refusal::AlreadySo });
    let cold = session.step(&Action::Sample { tap: Tap::Kitchen, hot: false }).shown;
    assert_eq!(cold, Shown::Refused { why: Refusal::NoFlow });
    // The record of a house says so; one from before there was the valve has it open.
    let plumbing = &mut session.home.plant.plumbing;
    let written = serde_json::to_string(plumbing).unwrap();
    assert_eq!(&serde_json::from_str::<plant::Plumbing>(&written).unwrap(), plumbing);
    let before = written.replacen(r#""main_valve":0.0,"#, "", 1);
    assert_ne!(before, written);
    plumbing.main_valve = 1.0;
    assert_eq!(&serde_json::from_str::<plant::Plumbing>(&before).unwrap(), plumbing);
}

/// Trade sheet, F37: the outlet falls more than 15 °F within 5 to 10 gallons.
#[test]
fn a_broken_dip_tube_shows_in_the_bucket() {
    let draw = |home| {
        let mut session = solo(home);
        let bucket = Action::Bucket { tap: Tap::Bath, volume: Volume::gallons(16.0) };
        match doing(&mut session, &[Action::TellHousehold, bucket]).shown {
            Shown::Bucket(bucket) => bucket.fell_after.map(Volume::to_gallons),
            other => panic!("{other:?}"),
        }
    };
    assert_eq!(draw(home()), None);
    let fell = draw(with(FaultId::F37)).unwrap();
    assert!(fell <= 12.0, "{fell}");
}

/// Trade sheet, F13: current on one leg though satisfied.
#[test]
fn a_grounded_element_loads_one_leg() {
    let mut session = solo(with(FaultId::F13));
    doing(&mut session, &[Action::Cover { which: Cover::JunctionBox, off: true }]);
    let amps = |session: &mut Session, wire| match doing(
        session,
        &[Action::Clamp { around: Clamped::Wire { wire } }],
    )
    .shown
    {
        Shown::Clamp { amps } => amps.get(),
        other => panic!("{other:?}"),
    };
    let (a, b) = (amps(&mut session, Wire::FeedA), amps(&mut session, Wire::FeedB));
    assert!(a < 0.5 && b > 8.0, "{a} {b}");
}

/// Trade sheet, F08: the button clicks once the tank has cooled, not before.
#[test]
fn a_tripped_limit_is_reset() {
    let mut session = solo(with(FaultId::F08));
    lock_out(&mut session);
    doing(&mut session, &uncover(Level::Upper)[..2]);
    let seen = doing(&mut session, &[Action::Look { at: plant::Place::UpperCompartment }]).shown;
    let Shown::Sights { sights, .. } = seen else { panic!("{seen:?}") };
    assert!(sights.contains(&Sight::Button { proud: true }));
    session.home.plant.limit.body = Temperature::fahrenheit(150.0);
    let shown = doing(&mut session, &[Action::PressReset]).shown;
    assert_eq!(shown, Shown::DoneWith { sights: vec![Sight::NoClick] });
    session.home.plant.limit.body = Temperature::fahrenheit(90.0);
    let shown = doing(&mut session, &[Action::PressReset]).shown;
    assert_eq!(shown, Shown::DoneWith { sights: vec![Sight::Clicked] });
    assert!(!session.home.plant.limit.tripped);
}

/// An off-peak heater has a limit beside each thermostat, each with a button of its own: one click does not say whose it
/// was, a look does.
#[test]
fn the_second_limit_of_an_off_peak_heater_shows_its_button() {
    let mut home = Home::sound(Setting { heater: HeaterModel::OffPeak80, ..home().setting });
    home.plant.lower_limit.as_mut().unwrap().tripped = true;
    let mut session = solo(home);
    for circuit in [Circuit::Heater, Circuit::OffPeak] {
        let slot = slot(&session, circuit);
        doing(&mut session, &[Action::Breaker { slot, on: false }]);
    }
    doing(&mut session, &uncover(Level::Upper));
    doing(&mut session, &uncover(Level::Lower));
    let mut seen = |at, sight| {
        let Shown::Sights { sights, .. } = doing(&mut session, &[Action::Look { at }]).shown else {
            panic!()
        };
        sights.contains(&sight)
    };
    assert!(seen(plant::Place::UpperCompartment, Sight::Button { proud: false }));
    assert!(seen(plant::Place::LowerCompartment, Sight::LowerButton { proud: true }));
    session.home.plant.lower_limit.as_mut().unwrap().body = Temperature::fahrenheit(90.0);
    let shown = doing(&mut session, &[Action::PressReset]).shown;
    let both = [Sight::Button { proud: false }, Sight::LowerButton { proud: false }];
    assert_eq!(shown, Shown::DoneWith { sights: [&[Sight::Clicked][..], &both].concat() });
}

/// Each of its two limits is a part of its own, behind its own covers, between its own screws.
#[test]
fn each_limit_of_an_off_peak_heater_is_changed_by_itself() {
    let house = |heater| Home::sound(Setting { heater, ..home().setting });
    let mut home = house(HeaterModel::OffPeak80);
    let below = home.plant.lower_limit.as_mut().unwrap();
    (below.tripped, below.seated) = (true, false);
    let mut session = solo(home);
    let slot = slot(&session, Circuit::Heater);
    doing(&mut session, &[Action::Breaker { slot, on: false }]);
    doing(&mut session, &uncover(Level::Upper));
    let change = |part| Action::Replace { part };
    let changed = |outcome: &Outcome| {
        outcome.facts.iter().find_map(|fact| match fact {
            Fact::Changed { part, needed, .. } => Some((*part, *needed)),
            _ => None,
        })
    };
    let above = doing(&mut session, &[change(NewPart::Limit)]);
    assert_eq!(changed(&above), Some((plant::fault::PartKind::Limit, false)));
    assert!(session.home.plant.lower_limit.unwrap().tripped);
    let covered = Shown::Refused { why: Refusal::CoverOn { cover: Cover::Lower } };
    assert_eq!(session.step(&change(NewPart::LowerLimit)).shown, covered);
    doing(&mut session, &uncover(Level::Lower));
    // Its own circuit is still on.
    let below = session.clone().step(&change(NewPart::LowerLimit));
    assert!(has(&below, |f| matches!(f, Fact::WorkedUnproved { live: true, .. })), "{below:?}");
    let off_peak = self::slot(&session, Circuit::OffPeak);
    doing(&mut session, &[Action::Breaker { slot: off_peak, on: false }]);
    let below = doing(&mut session, &[change(NewPart::LowerLimit)]);
    assert_eq!(changed(&below), Some((plant::fault::PartKind::LowerLimit, true)));
    assert!(!has(&below, |f| matches!(f, Fact::WorkedUnproved { live: true, .. })));
    assert!(!session.home.plant.lower_limit.unwrap().tripped);
    let other = solo(house(HeaterModel::Plain40));
    assert_eq!(refusal(&other, &change(NewPart::LowerLimit)), Some(Refusal::NotHere));
}

/// Trade sheet, F23: char at the splice, a smell through the lid.
#[test]
fn a_burnt_splice_smells_before_it_is_seen() {
    let mut session = solo(with(FaultId::F23));
    let at = plant::Place::JunctionBox;
    let shown = doing(&mut session, &[Action::Smell { at }]).shown;
    assert_eq!(shown, Shown::Sights { at, sights: vec![Sight::BurntSmell] });
    let shown = session.step(&Action::Look { at }).shown;
    assert_eq!(shown, Shown::Refused { why: Refusal::CoverOn { cover: Cover::JunctionBox } });
}
