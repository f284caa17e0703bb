//! The parts of the screens: panels of a drill at each place, the small things that every page is made of.

use bench::MeterFunction;
use plant::{BoxKind, HeaterModel, Location, Place, Screw};
use yew::prelude::*;

use super::drawings::OPENED;
use super::helps::outcomes;
use super::stand::{Stand, call, frame, house, known, wide};
use crate::drill::call::Call;
use crate::drill::kit::Kit;
use crate::drill::meter::Meter;
use crate::drill::notes::{FindingForm, Log, Suspects};
use crate::drill::place::{PlacePanel, Places};
use crate::said::use_voice;
use crate::shell::{Choice, Choices, Live};
use crate::store::{Desk, Setting};
use crate::text;

/// Readings after everything was opened: a figure, over range, nothing.
const READ: &str = r#"[{"do":"meter","function":"ohms","red":"UEa","black":"UEb"}]"#;

/// Every place of a heater with thermostats and of one with a board, everything open; the row of places, of which some
/// are not in every house.
pub fn places() -> Html {
    html! { <>{ rows() }{ each_place() }</> }
}

/// The row of places in a plain house, at one of them, and in one with everything.
fn rows() -> Html {
    let one = |caption: &str, model: HeaterModel, in_line: Option<BoxKind>, at: Option<Place>| {
        let session = call(house(model, in_line, Location::Basement), "[]")?;
        let desk = Desk { at, ..Desk::default() };
        Some(wide(caption.to_owned(), html! { <Stand {session} {desk}><Places /></Stand> }))
    };
    let all = [
        one("places", HeaterModel::Small20, None, None),
        one("places, at one", HeaterModel::Plain40, None, Some(Place::Drain)),
        one("places, with a box", HeaterModel::Both50, Some(BoxKind::UtilityRelay), None),
    ];
    all.into_iter().flatten().collect()
}

fn each_place() -> Html {
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

/// Buttons, fields, notices, and the strip of the last outcome.
#[component]
pub fn Small() -> Html {
    let voice = use_voice();
    let button = |class: &'static str, caption: text::Label| html! { <button type="button" {class}>{ caption }</button> };
    let places =
        Place::ALL.iter().map(|&place| Choice::new(place.name(), text::place(place))).collect::<Vec<_>>();
    html! {
        <>
            { frame("buttons", html! {
                <p>
                    { button("", text::HINT) }{ " " }{ button("go", text::HAND_OVER) }{ " " }{ button("quiet", text::CLOSE) }{ " " }{ button("plain", text::TELL_HOUSEHOLD) }
                    <button type="button" aria-pressed="true">{ text::GLOVES }</button>{ " " }
                    <button type="button" aria-disabled="true">{ text::NOT_YET }</button>{ " " }
                    <button type="button" disabled=true>{ text::CLEAR }</button>{ " " }
                    <a class="button" href="#/gallery">{ text::TO_DOORS }</a>
                </p>
            }) }
            { frame("fields", html! {
                <p>
                    <label class="field"><span>{ voice.text("page-learner") }</span><input value={voice.text("page-no-name")} /></label>
                    <label class="field"><span>{ voice.text("page-term-limit") }</span><input type="number" value="7" /></label>
                    <label class="tick"><input type="checkbox" checked=true />{ text::evidence(1) }</label>
                    <Choices label={text::GO_TO} choices={places} onchange={Callback::noop()} />
                </p>
            }) }
            { frame("notices", html! {
                <>
                    <p class="warn">{ text::CALL_ASKED }</p>
                    <p class="note">{ voice.text("page-learner-note") }</p>
                    <p class="muted">{ text::CAUTION }</p>
                </>
            }) }
            { outcomes() }
        </>
    }
}
