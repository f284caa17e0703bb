//! The ladder of every way of wiring, in every state of its contacts, wires and elements.

use std::rc::Rc;

use drill::debrief::{Moment, Phase, Told, letter};
use drill::{Attempt, Order};
use plant::parts::SheathFault;
use plant::{BoxKind, Breaker, Circuit, End, Handle, HeaterModel, Home, Location, Screw, Wire};
use quantity::{Amps, Ohms};
use words::Voice;
use yew::prelude::*;

use super::stand::{calls, frame, house};
use crate::debrief::ladder::LadderView;
use crate::debrief::phase::stretches;
use crate::debrief::sheet::{Sheet, Verdict, steps};
use crate::said::{Speech, use_voice};

/// A debrief's sheet of a house and acts, without accounts.
pub fn sheet(voice: &Voice, home: Home, acts: &str) -> Option<Rc<Sheet>> {
    let states = calls(home, acts)?;
    let session = states.last()?.clone();
    let moments: Vec<Moment> = session
        .log
        .iter()
        .zip(1..)
        .map(|(entry, step)| Moment {
            step,
            letter: letter(step),
            at: entry.at,
            of_day: session.job.starts_at + entry.at,
            took: entry.outcome.took,
            phase: Phase::of(&entry.action),
            told: Told::NoReading,
            lines: Vec::new(),
        })
        .collect();
    Some(Rc::new(Sheet {
        attempt: Rc::new(Attempt::new("", Order::chance(7, bench::Mode::Solo))),
        picture: drill::debrief::picture(&states),
        starts_at: session.job.starts_at,
        steps: steps(voice, &session.log, &moments),
        stretches: stretches(&moments),
        accounts: Vec::new(),
        sayings: Vec::new(),
        verdict: Verdict::default(),
        fault: plant::FaultId::F01,
        second: None,
        session: session.into(),
        speech: Speech::default(),
    }))
}

/// Every heater's circuit calling at the top, below, satisfied, and with the limit tripped.
#[component]
pub fn Circuits() -> Html {
    let voice = use_voice();
    let one = |caption: String, home: Home| {
        let inside = sheet(&voice, home, "[]").map(|sheet| html! { <LadderView {sheet} at=0 told=0 /> });
        frame(caption, inside.unwrap_or_default())
    };
    let calling = |home: &mut Home, [upper, lower]: [bool; 2]| {
        for (at, calls) in home.plant.thermostats.iter_mut().zip([upper, lower]) {
            at.calling = calls;
        }
    };
    let models = [
        (HeaterModel::Plain40, None),
        (HeaterModel::Both50, Some(BoxKind::UtilityRelay)),
        (HeaterModel::OffPeak80, None),
        (HeaterModel::Board50, None),
        (HeaterModel::Small20, Some(BoxKind::Timer)),
        (HeaterModel::Tall50At277, Some(BoxKind::FusedSwitch)),
    ];
    let states = models.into_iter().flat_map(|(model, in_line)| {
        let home = move || house(model, in_line, Location::Basement);
        [
            ("top calls", [true, true], false),
            ("bottom calls", [false, true], false),
            ("satisfied", [false; 2], false),
            ("limit tripped", [true; 2], true),
        ]
        .map(|(how, calls, tripped)| {
            let mut home = home();
            calling(&mut home, calls);
            home.plant.limit.tripped = tripped;
            if let Some(limit) = &mut home.plant.lower_limit {
                limit.tripped = tripped;
            }
            one(format!("{model}, {how}"), home)
        })
    });
    let changed = |caption: &str, change: fn(&mut Home)| {
        let mut home = house(HeaterModel::Plain40, None, Location::Basement);
        calling(&mut home, [false, true]);
        change(&mut home);
        one(caption.to_owned(), home)
    };
    html! {
        <>
            { for states }
            { changed("breaker off", |home| {
                for breaker in &mut home.plant.panel.breakers {
                    breaker.handle = Handle::Off;
                }
            }) }
            { changed("lower element broken", |home| home.plant.elements[1].open = true) }
            { changed("lower element grounded in its middle", |home| {
                home.plant.elements[1].leak = Some(SheathFault { fraction: 0.4, resistance: Ohms(0.5) });
            }) }
            { changed("a wire lifted, another on a wrong screw", |home| {
                home.plant.wiring.joint_mut(End { wire: Wire::LowerSwitched, side: 1 }).on = None;
                home.plant.wiring.joint_mut(End { wire: Wire::UpperSwitched, side: 1 }).on = Some(Screw::UEb);
            }) }
            { changed("second source", |home| {
                home.plant.wiring.second_source = true;
                home.plant.panel.breakers.push(Breaker::sound(Circuit::SecondSource, Amps(30.0)));
            }) }
        </>
    }
}
