//! The guide on the sheet: the stages of the call, what to do next, and why for whoever asks. It can be put away and
//! brought back.

use std::cell::Cell;
use std::rc::Rc;

use bench::{Action, Clamped};
use gloo::events::EventListener;
use gloo::timers::callback::Timeout;
use gloo::utils::document;
use plant::Place;
use wasm_bindgen::JsCast;
use web_sys::{Element, HtmlElement};
use words::{Fill, Voice};
use yew::prelude::*;

use super::{Guided, Next, Stage, next};
use crate::drill::known::Known;
use crate::drill::place::go;
use crate::glossary::Marked;
use crate::said::use_voice;
use crate::shell::{act_slug, coming};
use crate::store::{Desk, Lead, Msg, Rest, Setting, Tab, World, use_work};
use crate::text;

/// Until the place that was gone to is drawn.
const DRAWN_MS: u32 = 60;
/// Looks for it after the first.
const TRIES: u32 = 50;
/// Marks what is next on the page.
const MARK: &str = "data-next";

/// The world and what is known of it.
#[derive(Properties, PartialEq)]
pub struct Props {
    /// Which call it is.
    pub call: Guided,
    /// The world.
    pub session: World,
    /// What was perceived.
    pub known: Rc<Known>,
}

/// The card.
#[component]
pub fn GuideCard(props: &Props) -> Html {
    let voice = use_voice();
    let work = use_work();
    let reasons = use_state(|| false);
    let Props { call, session, known } = props;
    // Its words come with the rest of the book.
    let silent = work.rest != Rest::Here;
    let gone = work.desk.guide_away || session.ended.is_some();
    let away = gone || silent;
    let next = next(*call, session, known);
    {
        let marks = if away { Vec::new() } else { marks(&next, &work.desk) };
        use_effect(move || {
            let wanted = Rc::new(Cell::new(true));
            if mark(&marks).is_none() && !marks.is_empty() {
                when_drawn(marks.clone(), wanted.clone(), |_| {}, TRIES);
            }
            // What is chosen in a list shows what to press next, and the card is not drawn again for it.
            let again = wanted.clone();
            let chosen = EventListener::new(&document(), "change", move |_| {
                when_drawn(marks.clone(), again.clone(), |_| {}, TRIES);
            });
            move || {
                wanted.set(false);
                drop(chosen);
            }
        });
    }
    if gone {
        return html! {};
    }
    if silent {
        return html! { <section class="guide silent">{ coming(work.rest == Rest::Failed) }</section> };
    }
    let show = {
        let (work, next) = (work.clone(), next.clone());
        Callback::from(move |_: MouseEvent| {
            if let Some(place) = next.at {
                go(&work, place);
            }
            if next.at.is_none() || is_reading(&next) {
                work.dispatch(Msg::Turn(section(&next)));
            }
            let targets = targets(&next, &work.desk);
            when_drawn(targets, Rc::new(Cell::new(true)), point, TRIES);
        })
    };
    let ask = {
        let reasons = reasons.clone();
        Callback::from(move |_: MouseEvent| reasons.set(!*reasons))
    };
    let put_away = {
        let work = work.clone();
        Callback::from(move |_: MouseEvent| work.dispatch(Msg::Guide { away: true }))
    };
    let said = say(&voice, &next);
    let why = voice.text(&format!("guide-why-{}", next.say.trim_start_matches("guide-")));
    html! {
        <section
            class={classes!("guide", reasons.then_some("with-why"))}
            aria-label={voice.text("guide-title")}
            data-stage={next.stage.name()}
        >
            { stages(&voice, *call, next.stage) }
            <div class="guide-next" role="status">
                <p class="guide-do"><Marked text={said} /></p>
                if *reasons {
                    <p class="guide-why"><Marked text={why} /></p>
                }
            </div>
            <div class="guide-buttons">
                <button type="button" data-act="guide-why" aria-expanded={reasons.to_string()} onclick={ask}>
                    { voice.text("guide-reason") }
                </button>
                if next.action.is_some() {
                    <button type="button" data-act="guide-show" onclick={show}>{ voice.text("guide-show") }</button>
                }
                <button type="button" class="quiet" data-act="guide-away" onclick={put_away}>{ voice.text("guide-away") }</button>
            </div>
        </section>
    }
}

/// Brings the card back, from the head of the sheet.
#[component]
pub fn GuideSwitch() -> Html {
    let voice = use_voice();
    let work = use_work();
    if !work.desk.guide_away {
        return html! {};
    }
    let back = Callback::from(move |_: MouseEvent| work.dispatch(Msg::Guide { away: false }));
    html! { <button type="button" data-act="guide-back" onclick={back}>{ voice.text("guide-back") }</button> }
}

/// The stages in a row: done, now, left.
fn stages(voice: &Voice, call: Guided, now: Stage) -> Html {
    let one = |stage: Stage| {
        let (class, stands) = match () {
            () if stage < now => ("done", "guide-stage-done"),
            () if stage == now => ("now", "guide-stage-now"),
            () => ("left", "guide-stage-left"),
        };
        html! {
            <li {class} aria-current={(stage == now).then_some("step")}>
                { voice.text(&format!("guide-stage-{}", stage.name())) }
                <span class="unseen">{ ", " }{ voice.text(stands) }</span>
            </li>
        }
    };
    html! { <ol class="guide-stages">{ for call.stages().map(one) }</ol> }
}

/// What to do, with the names of what it is done to.
fn say(voice: &Voice, next: &Next) -> String {
    let fill = |name: &'static str, text: String| (name, Fill::from(text));
    let mut fills = Vec::new();
    match &next.action {
        Some(Action::Breaker { slot, .. } | Action::Lock { slot, .. }) => {
            fills.push(("slot", (slot + 1).into()))
        }
        Some(Action::Lift { end } | Action::Label { end }) => fills.push(fill("wire", voice.wire(end.wire))),
        Some(Action::Land { end, screw, .. }) => {
            fills.push(fill("wire", voice.wire(end.wire)));
            fills.push(fill("screw", screw.name().to_owned()));
        }
        Some(Action::Meter { function, red, black }) => {
            fills.push(fill("red", text::mark(*red)));
            fills.push(fill("black", text::mark(*black)));
            fills.push(fill("dial", text::setting(Setting::Leads(*function)).to_string()));
        }
        Some(Action::Finding { fault: Some(fault), .. }) => fills.push(fill("fault", voice.fault(*fault))),
        _ => {}
    }
    if let Some(place) = next.at {
        fills.push(fill("place", voice.text(&format!("place-{place}"))));
    }
    voice.filled(next.say, &fills)
}

/// Whether the meter or the clamp does it.
fn is_reading(next: &Next) -> bool {
    matches!(next.action, Some(Action::Meter { .. } | Action::Clamp { .. }))
}

/// The section of the page where a thing of the kit lies.
fn section(next: &Next) -> Tab {
    match &next.action {
        _ if is_reading(next) => Tab::Meter,
        Some(Action::ProveMeter { .. } | Action::ZeroLeads) => Tab::Meter,
        Some(Action::Finding { .. }) | None => Tab::Log,
        _ => Tab::Kit,
    }
}

/// Where the hand goes next on the page: a selector, and what to choose there if it is a list.
type Target = (String, String);

/// What is marked as next: the place where that is not at hand, before the lists in which a point stands too.
fn marks(next: &Next, desk: &Desk) -> Vec<Target> {
    let mut all = targets(next, desk);
    let away = next.at.filter(|place| desk.at != Some(*place) && *place != Place::Customer);
    if let Some(place) = away {
        let at = if matches!(next.action, Some(Action::Meter { .. })) { 0 } else { all.len() };
        all.insert(at, (format!("[data-go='{place}']"), String::new()));
    }
    all
}

/// What the hand goes to next, the nearest first: for a reading the dial, then each point, then the button.
fn targets(next: &Next, desk: &Desk) -> Vec<Target> {
    let Some(action) = &next.action else { return Vec::new() };
    let slug = act_slug(action);
    let to = |selector: String| (selector, String::new());
    let take = to("[data-act=take-reading]".to_owned());
    let dial = |setting: Setting| {
        (desk.setting != setting).then(|| to(format!("[data-setting='{}']", setting.name())))
    };
    match action {
        Action::Meter { function, red, black } => {
            let mut all: Vec<Target> = dial(Setting::Leads(*function)).into_iter().collect();
            for (lead, point, at) in [(Lead::Red, red, desk.red), (Lead::Black, black, desk.black)] {
                if at == Some(*point) {
                    continue;
                }
                if desk.lead_for(*point) != Some(lead) {
                    all.push(to(format!("[data-act='arm-{}']", lead.name())));
                }
                all.push(to(format!(".detail [data-point='{point}']")));
                all.push((format!("[data-choice=lead-{}]", lead.name()), point.to_string()));
            }
            all.push(take);
            all
        }
        Action::Clamp { around } => {
            let mut all: Vec<Target> = dial(Setting::Clamp).into_iter().collect();
            if let (true, Clamped::Wire { wire }) = (desk.clamped != Some(*around), around) {
                all.push(("[data-choice=clamp]".to_owned(), wire.name().to_owned()));
            }
            all.push(take);
            all
        }
        Action::Finding { fault, evidence } => {
            let missing = evidence.iter().filter(|step| !desk.ticks.contains(step));
            let mut all: Vec<Target> = missing.map(|step| to(format!("[data-step='{step}']"))).collect();
            if let Some(fault) = fault {
                all.push(to(format!("[data-act^='finding'][data-act*='fault={fault}']")));
                all.push(("[data-choice=finding]".to_owned(), fault.name().to_owned()));
            }
            all
        }
        // All the covers in one go, where there is more than one.
        Action::Cover { .. } => {
            vec![to(format!("[data-act='all {slug}']")), to(format!("[data-act='{slug}']"))]
        }
        Action::HandOver => vec![to("[data-act=hand-over-asked]".to_owned())],
        Action::Lift { end } | Action::Label { end } | Action::Land { end, .. } => vec![
            to(format!("[data-act='{slug}']")),
            to(format!(".detail [data-point='{end}']")),
            ("[data-choice=point]".to_owned(), end.to_string()),
        ],
        _ => vec![to(format!("[data-act='{slug}']")), (format!("select:has(option[value='{slug}'])"), slug)],
    }
}

fn found(selector: &str) -> Option<Element> {
    document().query_selector(selector).ok().flatten()
}

/// Marks the first of them that is on the page, and nothing else.
fn mark(targets: &[Target]) -> Option<Element> {
    let first = targets.iter().find_map(|(selector, value)| Some((found(selector)?, value)));
    while let Some(old) = found(&format!("[{MARK}]")) {
        if old.remove_attribute(MARK).is_err() {
            break;
        }
    }
    let (element, value) = first?;
    // Fails only for a name that is no attribute's.
    let _ = element.set_attribute(MARK, value);
    Some(element)
}

/// Marks the first of them once it is drawn, which takes a slow device several looks, and gives it a hand.
fn when_drawn(targets: Vec<Target>, wanted: Rc<Cell<bool>>, hand: fn(&Element), tries: u32) {
    let again = move || {
        if !wanted.get() {
            return;
        }
        match mark(&targets) {
            Some(element) => hand(&element),
            None if tries > 0 => when_drawn(targets, wanted, hand, tries - 1),
            None => {}
        }
    };
    Timeout::new(DRAWN_MS, again).forget();
}

/// Gives the focus to it, which brings it into view.
fn point(element: &Element) {
    // A point of the drawing takes the focus as a button does; it fails only for what is not in the page.
    let _ = element.unchecked_ref::<HtmlElement>().focus();
}
