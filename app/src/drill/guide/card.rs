//! The guide on the sheet: the stages of the call, what to do next, and why. It can be put away and brought back.

use std::rc::Rc;

use bench::{Action, Clamped, Session};
use gloo::timers::callback::Timeout;
use gloo::utils::document;
use wasm_bindgen::JsCast;
use web_sys::{Element, HtmlElement};
use words::{Fill, Voice};
use yew::prelude::*;

use super::{Next, Stage, next};
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
    let Props { session, known } = props;
    // Its words come with the rest of the book.
    let silent = work.rest != Rest::Here;
    let gone = work.desk.guide_away || session.ended.is_some();
    let away = gone || silent;
    let next = next(session, known);
    {
        let targets = if away { Vec::new() } else { targets(&next, &work.desk) };
        use_effect(move || drop(mark(&targets)));
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
            point_when_drawn(targets, TRIES);
        })
    };
    let put_away = {
        let work = work.clone();
        Callback::from(move |_: MouseEvent| work.dispatch(Msg::Guide { away: true }))
    };
    let said = say(&voice, &next, session);
    let why = voice.text(&format!("guide-why-{}", next.say.trim_start_matches("guide-")));
    html! {
        <section class="guide" aria-label={voice.text("guide-title")} data-stage={next.stage.name()}>
            { stages(&voice, next.stage) }
            <div class="guide-next" role="status">
                <p class="guide-do"><Marked text={said} /></p>
                <p class="guide-why"><Marked text={why} /></p>
            </div>
            <div class="guide-buttons">
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
fn stages(voice: &Voice, now: Stage) -> Html {
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
    html! { <ol class="guide-stages">{ for Stage::ALL.map(one) }</ol> }
}

/// What to do, with the names of what it is done to.
fn say(voice: &Voice, next: &Next, session: &Session) -> String {
    let wiring = &session.home.plant.wiring;
    let fill = |name: &'static str, text: String| (name, Fill::from(text));
    let mut fills = Vec::new();
    match &next.action {
        Some(Action::Cover { which, .. }) => fills.push(fill("cover", voice.cover(*which))),
        Some(Action::Breaker { slot, .. } | Action::Lock { slot, .. }) => {
            fills.push(("slot", (slot + 1).into()))
        }
        Some(Action::Lift { end } | Action::Label { end }) => fills.push(fill("wire", voice.wire(end.wire))),
        Some(Action::Land { end, screw, .. }) => {
            fills.push(fill("wire", voice.wire(end.wire)));
            fills.push(fill("screw", screw.name().to_owned()));
        }
        Some(Action::Meter { function, red, black }) => {
            fills.push(fill("red", text::point(*red, wiring)));
            fills.push(fill("black", text::point(*black, wiring)));
            fills.push(fill("dial", text::setting(Setting::Leads(*function)).to_string()));
        }
        Some(Action::Finding { fault: Some(fault), .. }) => fills.push(fill("fault", voice.fault(*fault))),
        Some(Action::Gloves { .. }) => fills.push(fill("what", text::GLOVES.to_string())),
        Some(Action::EyeProtection { .. }) => fills.push(fill("what", text::EYES.to_string())),
        _ => {}
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

/// Gives the focus to the first of them once it is drawn, which takes a slow device several looks.
fn point_when_drawn(targets: Vec<Target>, tries: u32) {
    let again = move || {
        if !point_at(&targets) && tries > 0 {
            point_when_drawn(targets, tries - 1);
        }
    };
    Timeout::new(DRAWN_MS, again).forget();
}

/// Gives the focus to the first of them that is on the page, which brings it into view; whether there is one.
fn point_at(targets: &[Target]) -> bool {
    let Some(element) = mark(targets) else { return false };
    // A point of the drawing takes the focus as a button does; it fails only for what is not in the page.
    let _ = element.unchecked_ref::<HtmlElement>().focus();
    true
}
