//! The parts of the screens: panels of a drill at each place, the small things that every page is made of.

use bench::MeterFunction;
use plant::{HeaterModel, Location, Place, Screw};
use yew::prelude::*;

use super::drawings::OPENED;
use super::stand::{Stand, call, frame, house, known};
use crate::drill::call::Call;
use crate::drill::kit::Kit;
use crate::drill::meter::Meter;
use crate::drill::notes::{FindingForm, Log, Suspects};
use crate::drill::place::PlacePanel;
use crate::shell::Live;
use crate::store::{Desk, Setting};
use crate::text;

/// Readings after everything was opened: a figure, over range, nothing.
const READ: &str = r#"[{"do":"meter","function":"ohms","red":"UEa","black":"UEb"}]"#;

/// Every place of a heater with thermostats and of one with a board, everything open.
pub fn places() -> Html {
    [HeaterModel::Plain40, HeaterModel::Board50]
        .into_iter()
        .flat_map(|model| {
            let session = call(house(model, None, Location::Attic), OPENED);
            Place::ALL.iter().filter_map(move |&place| {
                let session = session.clone()?;
                let known = known(&session);
                let desk = Desk { at: Some(place), ..Desk::default() };
                let inside = html! { <PlacePanel session={session.clone()} {known} /> };
                Some(frame(format!("{model}, {place}"), html! { <Stand {session} {desk}>{ inside }</Stand> }))
            })
        })
        .collect()
}

/// Call, log, meter, kit, suspects and finding: at the start, and with all that was read.
pub fn panels() -> Html {
    let opened = OPENED.trim_end_matches(']').to_owned() + "," + READ.trim_start_matches('[');
    let acts = ["[]".to_owned(), opened];
    acts.iter()
        .filter_map(|acts| {
            let session = call(house(HeaterModel::Plain40, None, Location::Basement), acts)?;
            let known = known(&session);
            let desk = Desk {
                red: Some(Screw::UEa.into()),
                black: Some(Screw::UEb.into()),
                setting: Setting::Leads(MeterFunction::Ohms),
                ..Desk::default()
            };
            let stand = |caption: &str, inside: Html| {
                let (session, desk) = (session.clone(), desk.clone());
                frame(caption.to_owned(), html! { <Stand {session} {desk}>{ inside }</Stand> })
            };
            Some(html! {
                <>
                    { stand("call", html! { <Call session={session.clone()} {known} /> }) }
                    { stand("log", html! { <Log session={session.clone()} /> }) }
                    { stand("meter", html! { <Meter session={session.clone()} /> }) }
                    { stand("kit", html! { <Kit session={session.clone()} /> }) }
                    { stand("suspects", html! { <Suspects session={session.clone()} /> }) }
                    { stand("finding", html! { <FindingForm session={session.clone()} /> }) }
                    { stand("last outcome", html! { <Live /> }) }
                </>
            })
        })
        .collect()
}

/// Buttons, fields, tags, notices and cards.
pub fn small() -> Html {
    let button = |class: &'static str, caption: &'static str| html! { <button type="button" {class}>{ caption }</button> };
    html! {
        <>
            { frame("buttons", html! {
                <p>
                    { button("", "plain") }{ " " }{ button("go", "go") }{ " " }{ button("quiet", "quiet") }{ " " }{ button("plain", "wide") }
                    <button type="button" aria-pressed="true">{ "pressed" }</button>{ " " }
                    <button type="button" aria-disabled="true">{ "not now" }</button>{ " " }
                    <button type="button" disabled=true>{ "disabled" }</button>{ " " }
                    <a class="button" href="#/gallery">{ "link" }</a>
                </p>
            }) }
            { frame("fields", html! {
                <p>
                    <label>{ "text " }<input value="some words" /></label>
                    <label>{ "number " }<input type="number" value="7" /></label>
                    <label>{ "tick " }<input type="checkbox" checked=true /></label>
                    <label>{ "choice " }<select><option>{ "first" }</option><option>{ "second" }</option></select></label>
                </p>
            }) }
            { frame("notices", html! {
                <>
                    <p class="warn">{ "a warning" }</p>
                    <p class="note">{ "a note" }</p>
                    <div class="live"><p>{ "an outcome" }</p></div>
                    <div class="live refused"><p>{ "refused" }</p></div>
                    <div class="live stopped"><p>{ "stopped by the coach" }</p></div>
                    <div class="live harm"><p>{ "somebody was hurt" }</p></div>
                    <p class="harm">{ "a harm in the debrief" }</p>
                    <p class="muted">{ text::CAUTION }</p>
                </>
            }) }
            { frame("accounts", html! {
                <div class="account">
                    <h2>{ "Safety" }</h2>
                    <p class="points"><b>{ "37" }</b>{ " " }<small>{ "of 40" }</small></p>
                    <details class="line" open=true><summary><b class="cost">{ "−3" }</b>{ " " }<b class="letter">{ "c" }</b>{ " · a line" }</summary><p>{ "why it matters" }</p></details>
                    <details class="line gate"><summary><b class="cost">{ "−40" }</b>{ " a gate" }</summary></details>
                </div>
            }) }
        </>
    }
}
