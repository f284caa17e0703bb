//! What is in the dialog: acts with their keys, what is refused and why, points for the leads, and where one can go.

use bench::{Action, MeterFunction, Refusal, Session, refusal};
use gloo::timers::callback::Timeout;
use gloo::utils::document;
use plant::{Place, Point};
use wasm_bindgen::JsCast;
use web_sys::HtmlElement;
use words::Voice;
use yew::prelude::*;

use super::offered::{Can, offered};
use crate::drill::known::Known;
use crate::drill::meter::points_of;
use crate::drill::place::{go, is_there};
use crate::here::{Setting, Switch};
use crate::said::use_voice;
use crate::store::{Msg, WorkHandle, World, use_work};
use crate::text;

/// Until the dialog is gone and the page takes the focus again.
const GONE_MS: u32 = 30;

/// The world, and how to close the dialog.
#[derive(Properties, PartialEq)]
pub struct Props {
    /// The world.
    pub session: World,
    /// Closes the dialog.
    pub onclose: Callback<()>,
}

/// What is in the dialog.
#[component]
pub fn HereSheet(props: &Props) -> Html {
    let voice = use_voice();
    let work = use_work();
    let lists = match work.desk.at {
        Some(place) => at_place(&voice, &work, props, place),
        None => places(&voice, &work, props),
    };
    let title = work.desk.at.map_or_else(|| text::WHOLE_DRAWING.to_string(), text::place);
    html! {
        <div class="here-body">
            <p class="here-where">{ title }</p>
            { lists }
            <p class="sub">{ voice.text("here-always") }</p>
            <Switch of={Setting::Key} />
            <Switch of={Setting::Sound} />
        </div>
    }
}

/// A heading with buttons, each with its key.
fn buttons(title: String, all: Vec<(Option<char>, AttrValue, Callback<MouseEvent>)>) -> Html {
    html! {
        <section aria-label={title.clone()}>
            <h3>{ title }</h3>
            <ul class="here-acts">
                { for all.into_iter().map(|(key, label, onclick)| html! {
                    <li>
                        <button type="button" data-key={key.map(String::from)} aria-keyshortcuts={key.map(String::from)} {onclick}>
                            if let Some(key) = key { <kbd aria-hidden="true">{ key }</kbd> }
                            <span>{ label }</span>
                        </button>
                    </li>
                }) }
            </ul>
        </section>
    }
}

fn places(voice: &Voice, work: &WorkHandle, props: &Props) -> Html {
    let there = Place::ALL.iter().copied().filter(|place| is_there(&props.session, *place));
    let all = there.zip('1'..='9').map(|(place, key)| {
        let (work, onclose) = (work.clone(), props.onclose.clone());
        let onclick = Callback::from(move |_: MouseEvent| {
            onclose.emit(());
            go(&work, place);
        });
        (Some(key), AttrValue::from(text::place(place)), onclick)
    });
    let all: Vec<_> = all.collect();
    html! { <><p>{ voice.text("here-drawing") }</p>{ buttons(text::GO_TO.to_string(), all) }</> }
}

fn at_place(voice: &Voice, work: &WorkHandle, props: &Props, place: Place) -> Html {
    let session = &props.session;
    let (can, cannot) = offered(place, session, &Known::of(session), work.desk.units);
    let acts = can.into_iter().map(|one| {
        let Can { key, label, title, action } = one;
        let told = done(work, &props.onclose, action, label.clone());
        let said = if title.is_empty() || title == label {
            label
        } else {
            let fills = [("heading", title.to_string().into()), ("act", label.to_string().into())];
            voice.filled("here-act", &fills).into()
        };
        (key, said, told)
    });
    let layout = session.home.plant.wiring.layout;
    let points = points_of(session, place);
    html! {
        <>
            { buttons(voice.text("here-can"), acts.collect()) }
            if !cannot.is_empty() {
                <section aria-label={voice.text("here-cannot")}>
                    <h3>{ voice.text("here-cannot") }</h3>
                    <dl class="here-list">
                        { for cannot.iter().map(|one| html! {
                            <div><dt>{ &one.label }</dt><dd>{ text::fit(voice.refusal(&one.why), layout) }</dd></div>
                        }) }
                    </dl>
                </section>
            }
            if !points.is_empty() {
                <section aria-label={voice.text("here-points")}>
                    <h3>{ voice.text("here-points") }</h3>
                    if let Some(why) = bare(session, &points) {
                        <p>{ text::fit(voice.refusal(&why), layout) }</p>
                    } else {
                        <ul class="here-points">{ for points.into_iter().map(|point| spot(work, session, point)) }</ul>
                    }
                </section>
            }
        </>
    }
}

/// Does the act; a list to choose from is gone to instead.
fn done(
    work: &WorkHandle,
    onclose: &Callback<()>,
    action: Option<Action>,
    label: AttrValue,
) -> Callback<MouseEvent> {
    let (work, onclose) = (work.clone(), onclose.clone());
    Callback::from(move |_: MouseEvent| {
        onclose.emit(());
        if let Some(action) = &action {
            work.dispatch(Msg::Do(vec![action.clone()]));
            return;
        }
        let name = label.clone();
        Timeout::new(GONE_MS, move || {
            let lists = document().query_selector_all(".doing select[data-choice]").ok();
            let count = lists.as_ref().map_or(0, web_sys::NodeList::length);
            let all = (0..count).filter_map(|at| lists.as_ref()?.item(at)?.dyn_into::<HtmlElement>().ok());
            if let Some(list) =
                all.into_iter().find(|one| one.get_attribute("data-choice").as_deref() == Some(&*name))
            {
                // Fails only for an element that is not in the page.
                let _ = list.focus();
            }
        })
        .forget();
    })
}

/// Why no lead reaches the points, where none does.
fn bare(session: &Session, points: &[Point]) -> Option<Refusal> {
    let (red, black) = (*points.first()?, *points.get(1)?);
    refusal(session, &Action::Meter { function: MeterFunction::Volts, red, black })
}

/// A point: picking it puts the lead in hand there.
fn spot(work: &WorkHandle, session: &Session, point: Point) -> Html {
    let (red, black) = (work.desk.red == Some(point), work.desk.black == Some(point));
    let onclick = {
        let work = work.clone();
        Callback::from(move |_: MouseEvent| work.dispatch(Msg::Pick(point)))
    };
    html! {
        <li>
            <button type="button" {onclick} aria-pressed={(red || black).to_string()}>
                if red { <span class="dot red-dot"></span> }
                if black { <span class="dot black-dot"></span> }
                { text::point(point, &session.home.plant.wiring) }
            </button>
        </li>
    }
}
