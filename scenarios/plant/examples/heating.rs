//! Prints how joints, contacts, breakers, dry sheaths and the limit's body warm and cool under several load
//! histories, for an independent integrator to check: `case,seconds,input,second input,value` a line.
//!
//! The input is what stood since the line before.

use plant::climate::Climate;
use plant::controls::{self, element::Beside};
use plant::heater::Rating;
use plant::household::HouseholdKind;
use plant::{Breaker, Circuit, Contact, ContactAt, Element, End, HeaterModel, Level, Plant, Setting, Wire};
use quantity::{Amps, Ohms, Seconds, Temperature, Volts, Watts};

/// A name, on and off times in seconds, and the step they are cut into.
type History = (&'static str, &'static [(bool, f64)], f64);

/// The load histories.
const HISTORIES: [History; 3] = [
    ("step", &[(true, 3600.0), (false, 1800.0)], 300.0),
    ("long-steps", &[(true, 900.0), (false, 300.0), (true, 2400.0), (false, 7200.0)], 900.0),
    (
        "cycling",
        &[(true, 240.0), (false, 180.0), (true, 240.0), (false, 60.0), (true, 30.0), (false, 400.0)],
        17.0,
    ),
];

/// Rounds of each history.
const ROUNDS: usize = 6;

fn plant() -> Plant {
    let (household, climate) = (HouseholdKind::Couple, Climate::MillValley);
    Plant::sound(Setting {
        heater: HeaterModel::Plain40,
        household,
        climate,
        day: 100,
        in_line: None,
        location: Default::default(),
    })
}

/// The steps of a history: on, and how long.
fn steps(history: &[(bool, f64)], step: f64) -> Vec<(bool, f64)> {
    let mut steps = Vec::new();
    for _ in 0..ROUNDS {
        for &(on, time) in history {
            let mut left = time;
            while left > 0.0 {
                let now = left.min(step);
                steps.push((on, now));
                left -= now;
            }
        }
    }
    steps
}

/// A joint and a contact, each with the current of the real network through it.
fn network(ohms: f64) {
    let end = End { wire: Wire::FeedA, side: 0 };
    let at = ContactAt::LowerCold;
    for (name, history, step) in HISTORIES {
        let mut plant = plant();
        plant.wiring.joint_mut(end).resistance = Ohms(ohms);
        plant.thermostats[1].cold_contact = Contact::Worn(Ohms(ohms));
        let mut t = 0.0;
        for (on, time) in steps(history, step) {
            plant.thermostats.iter_mut().for_each(|t| t.calling = false);
            plant.thermostats[1].calling = on;
            let live = plant.energise(&[]);
            let room = plant.room;
            controls::burn(&mut plant, Seconds(time), &live, [room; 2], [true; 2]);
            t += time;
            let rise = plant.wiring.joint(end).rise.get();
            println!("joint-{name}-{ohms},{t},{},0,{rise:.12}", live.joint_watts(end).get());
            let rise = plant.contact(at).1.rise.get();
            println!("contact-{name}-{ohms},{t},{},0,{rise:.12}", live.contact_watts(at).get());
        }
    }
}

/// Both poles of a breaker under a current, until it trips.
fn breaker(amps: f64) {
    for (name, history, step) in HISTORIES {
        let mut breaker = Breaker::sound(Circuit::Heater, Amps(30.0));
        let mut t = 0.0;
        for (on, time) in steps(history, step) {
            let now = if on { amps } else { 0.0 };
            let tripped = breaker.advance(Seconds(time), [Amps(now), Amps(now)]);
            if let Some(at) = tripped {
                println!("breaker-{name}-{amps},{},{now},1,1", t + at.get());
                break;
            }
            t += time;
            println!("breaker-{name}-{amps},{t},{now},0,{:.14}", breaker.heat[0]);
        }
    }
}

/// A sheath in air, with pauses in which it cools.
fn sheath(watts: f64) {
    let rating = Rating { watts: Watts(4500.0), volts: Volts(240.0) };
    let room = Temperature::celsius(20.0);
    let mut element = Element { sheath: room, ..Element::sound(rating) };
    let beside = Beside { wetted: false, water: room, boils_at: Temperature::celsius(148.0), room };
    let mut t = 0.0;
    for (on, time) in
        [(true, 20.0), (false, 45.0), (true, 15.0), (false, 300.0), (true, 25.0), (false, 500.0)]
    {
        for _ in 0..5 {
            let now = if on { watts } else { 0.0 };
            element.advance(Seconds(time / 5.0), Watts(now), beside);
            t += time / 5.0;
            println!("sheath-{watts},{t},{now},0,{:.9}", element.sheath.get());
        }
    }
}

/// The limit's body: a wall that is warmer, and a hot joint beside it.
fn limit(ohms: f64) {
    let mut plant = plant();
    plant.wiring.joint_mut(End { wire: Wire::FeedA, side: 1 }).resistance = Ohms(ohms);
    plant.limit.body = plant.room;
    plant.thermostats[1].dial = Temperature::fahrenheit(150.0);
    plant.thermostats[1].calling = true;
    let mut t = 0.0;
    println!("limit-{ohms},0,{},{},{}", plant.wall(Level::Upper).get(), 0.0, plant.limit.body.get());
    for _ in 0..120 {
        plant.advance(Seconds(15.0));
        t += 15.0;
        let (wall, heat) = (plant.wall(Level::Upper).get(), plant.heat_beside_limit().get());
        println!("limit-{ohms},{t},{wall},{heat},{:.9}", plant.limit.body.get());
        if plant.limit.tripped {
            break;
        }
    }
}

fn main() {
    [0.02, 0.05, 0.1].into_iter().for_each(network);
    [25.0, 40.5, 60.0, 90.0, 150.0].into_iter().for_each(breaker);
    [1125.0, 4500.0].into_iter().for_each(sheath);
    [0.001, 0.05, 0.1].into_iter().for_each(limit);
}
