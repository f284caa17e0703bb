//! The guide on the sheet: the stages of the call, what to do next, and why for whoever asks. It can be put away and
//! brought back.

use std::rc::Rc;

use bench::Action;
use words::{Fill, Voice};
use yew::prelude::*;

use super::{Guided, Next, Stage, hand, next};
use crate::drill::known::Known;
use crate::drill::place::go;
use crate::glossary::Marked;
use crate::said::use_voice;
use crate::shell::coming;
use crate::store::{Msg, Rest, Setting, Tab, World, use_work};
use crate::text;

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
        let marks = if away { Vec::new() } else { hand::marks(&next, &work.desk) };
        use_effect(move || hand::mark(marks));
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
            hand::lend(hand::targets(&next, &work.desk));
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
        Some(Action::Lift { end } | Action::Label { end }) => fills.push(fill("wire", voice.wire_of(*end))),
        Some(Action::Land { end, screw, .. }) => {
            fills.push(fill("wire", voice.wire_of(*end)));
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
