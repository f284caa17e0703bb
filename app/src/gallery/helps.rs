//! What helps a learner along: the guide at each of its stages, "what can I do here", the pocket card, every dialog, a
//! wait under way, and the notices across the drill.

use std::ops::ControlFlow;

use bench::{Action, Mode, Session};
use plant::{HeaterModel, Location, Place};
use yew::prelude::*;

use super::drawings::OPENED;
use super::judged::guided;
use super::stand::{Opened, Stand, call, calls_in, drill, frame, house, known, wide};
use crate::drill::call::Call;
use crate::drill::guide::{GuideCard, GuideSwitch, Guided, Stage, next};
use crate::drill::head::Head;
use crate::drill::here::sheet::HereSheet;
use crate::drill::known::Known;
use crate::drill::notes::PocketCard;
use crate::drill::over::Over;
use crate::here::PageHere;
use crate::route::Route;
use crate::said::use_voice;
use crate::shell::{ClearDevice, Live, passing};
use crate::store::{Desk, Keeping, Ongoing, World};
use crate::text;

/// The job at the beginning of each stage of the guide.
fn stages() -> Vec<(Stage, World)> {
    let mut found: Vec<(Stage, World)> = Vec::new();
    for session in guided() {
        let stage = next(Guided::Second, session, &Known::of(session)).stage;
        if found.last().is_none_or(|(before, _)| *before != stage) {
            found.push((stage, session.clone().into()));
        }
    }
    found
}

/// The guide's card at each stage, and the button that brings it back.
pub fn guide() -> Html {
    let card = |(stage, session): (Stage, World)| {
        let known = known(&session);
        let inside = html! { <GuideCard call={Guided::Second} session={session.clone()} {known} /> };
        wide(stage.name(), html! { <Stand {session}>{ inside }</Stand> })
    };
    let away = Desk { guide_away: true, ..Desk::default() };
    let back = call(house(HeaterModel::Plain40, None, Location::Basement), "[]")
        .map(|session| frame("put away", html! { <Stand {session} desk={away}><GuideSwitch /></Stand> }));
    html! { <>{ for stages().into_iter().map(card) }{ back.unwrap_or_default() }</> }
}

/// "What can I do here" before the whole drawing, at a place with its cover on, and at one laid bare.
fn here() -> Html {
    let home = || house(HeaterModel::Plain40, None, Location::Basement);
    let one = |caption: &str, acts: &str, at: Option<Place>| {
        call(home(), acts).map(|session| {
            let desk = Desk { at, ..Desk::default() };
            let sheet = html! { <HereSheet session={session.clone()} onclose={Callback::noop()} /> };
            let inside = html! { <Opened><dialog class="dialog here-sheet"><div class="dialog-sheet">{ sheet }</div></dialog></Opened> };
            frame(format!("here, {caption}"), html! { <Stand {session} {desk}>{ inside }</Stand> })
        })
    };
    [
        one("whole drawing", "[]", None),
        one("cover on", "[]", Some(Place::UpperCompartment)),
        one("laid bare", OPENED, Some(Place::UpperCompartment)),
    ]
    .into_iter()
    .flatten()
    .collect()
}

/// The same on each page around the drill.
fn offered() -> Html {
    let one = |route: Route| {
        let sheet = html! { <PageHere {route} /> };
        let inside = html! { <Opened><dialog class="dialog here-sheet"><div class="dialog-sheet">{ sheet }</div></dialog></Opened> };
        frame(format!("here, {route:?}"), inside)
    };
    Route::ALL.into_iter().map(one).collect()
}

/// Last outcomes, each of a real act: done, refused, stopped by the coach, and one that hurt.
pub fn outcomes() -> Html {
    const BARE: &str = r#"{"do":"cover","which":"lower","off":true},{"do":"cover","which":"lower-insulation","off":true},{"do":"cover","which":"lower-shield","off":true}"#;
    const HAND: &str = r#"{"do":"touch","at":{"what":"metal","point":"D1"}}"#;
    let one = |caption: &str, mode: Mode, acts: String| {
        let home = house(HeaterModel::Plain40, None, Location::Basement);
        let session = World::from(calls_in(mode, home, &acts)?.pop()?);
        Some(frame(caption.to_owned(), html! { <Stand {session}><Live /></Stand> }))
    };
    [
        one("done", Mode::Solo, r#"[{"do":"read","what":"plate"}]"#.to_owned()),
        one("refused", Mode::Solo, r#"[{"do":"lift","end":"lower-switched@LEa"}]"#.to_owned()),
        one("stopped by the coach", Mode::Coached, format!("[{BARE},{HAND}]")),
        one("hurt", Mode::Solo, format!("[{BARE},{HAND}]")),
    ]
    .into_iter()
    .flatten()
    .collect()
}

/// A wait half way, held still.
#[component]
fn Waiting() -> Html {
    let voice = use_voice();
    let session = call(house(HeaterModel::Plain40, None, Location::Basement), "[]");
    let Some(session) = session else { return html! {} };
    let starts = session.job.starts_at;
    let ControlFlow::Continue(ongoing) = Ongoing::begin(&session, &Action::Wait { minutes: 240.0 }) else {
        return html! {};
    };
    for _ in 0..6 {
        // Held still: nothing ends before its pieces do.
        let _ = ongoing.go_on(|| false);
    }
    html! {
        <div class="live">
            { passing::bar(&voice, &ongoing, starts) }
            <p role="status">{ text::WAITING }</p>
        </div>
    }
}

/// Notices across the drill.
fn notices() -> Html {
    const OVER: &str = r#"[{"do":"hand-over"}]"#;
    const CALLED: &str = r#"[{"do":"stop-and-call","whom":"electrician"}]"#;
    let one = |caption: &str, acts: &str, keeping: Keeping, broken: Option<u32>| {
        call(house(HeaterModel::Plain40, None, Location::Basement), acts).map(|session| {
            frame(caption.to_owned(), html! { <Stand {session} {keeping} {broken}><Over /></Stand> })
        })
    };
    [
        one("handed over", OVER, Keeping::Kept, None),
        one("called", CALLED, Keeping::Kept, None),
        one("storage blocked", "[]", Keeping::Blocked, None),
        one("storage full", "[]", Keeping::Full, None),
        one("another tab", "[]", Keeping::Elsewhere, None),
        one("an act unread", "[]", Keeping::Kept, Some(2)),
    ]
    .into_iter()
    .flatten()
    .collect()
}

/// Every dialog and fold open: hint, hand-over, here, whom to call, what to tell, clear the device; the pocket card.
pub fn dialogs() -> Html {
    let opened = |caption: &str, inside: &dyn Fn(World) -> Html| {
        let session = call(house(HeaterModel::Plain40, None, Location::Basement), OPENED)?;
        let inside = inside(session.clone());
        Some(frame(caption.to_owned(), html! { <Stand {session}><Opened>{ inside }</Opened></Stand> }))
    };
    let head = coached().map(|session| {
        let drill = drill();
        let inside = html! { if let Some(drill) = drill { <Head {drill} session={session.clone()} /> } };
        wide("head", html! { <Stand {session}><Opened>{ inside }</Opened></Stand> })
    });
    html! {
        <>
            { head.unwrap_or_default() }
            { here() }
            { offered() }
            { opened("call, told and asked", &|session| html! { <Call known={known(&session)} {session} /> }).unwrap_or_default() }
            { opened("clear the device", &|_| html! { <ClearDevice /> }).unwrap_or_default() }
            { opened("pocket card", &|_| html! { <PocketCard /> }).unwrap_or_default() }
            { frame("a wait half way", html! { <Waiting /> }) }
            { notices() }
        </>
    }
}

/// A job with the coach, a few acts in.
fn coached() -> Option<World> {
    let home = house(HeaterModel::Plain40, None, Location::Basement);
    let states: Vec<Session> = calls_in(Mode::Coached, home, r#"[{"do":"tell-household"}]"#)?;
    states.into_iter().next_back().map(World::from)
}
