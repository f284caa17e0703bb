//! What is handed out: code, link, square code, files, and the sheet to print.

use bench::Mode;
use drill::{Opening, Order};
use gloo::utils::window;
use words::Voice;
use yew::prelude::*;

use super::square::Square;
use crate::exam::Expect;
use crate::files::{CopyText, file_name, save};
use crate::said::use_voice;
use crate::text::CAUTION;

/// The drill.
#[derive(Properties, PartialEq)]
pub struct Props {
    /// The drill.
    pub order: Order,
}

/// The card, and the sheet that is printed.
#[component]
pub fn Handout(props: &Props) -> Html {
    let voice = use_voice();
    let order = &props.order;
    let body = match drill::code::encode(order) {
        Ok(code) => with_code(&voice, order, &code),
        Err(error) => html! { <p class="warn" role="alert">{ error.to_string() }</p> },
    };
    html! {
        <section class="card handout" data-door="handout">
            <h2>{ voice.text("instructor-sheet") }</h2>
            { body }
            <div class="row">
                { save_button("instructor-save-drill", "save-drill", &voice, "drill", order, order.write()) }
                if order.mode == Mode::Exam {
                    { save_button("instructor-save-opening", "save-opening", &voice, "opening", order, Opening::of(std::slice::from_ref(order)).write()) }
                }
            </div>
            if order.mode == Mode::Exam {
                <p class="note">{ voice.text("instructor-opening-note") }</p>
            }
        </section>
    }
}

fn with_code(voice: &Voice, order: &Order, code: &str) -> Html {
    let link = link_to(code);
    let print = Callback::from(|_: MouseEvent| drop(window().print()));
    html! {
        <>
            <p class="big-code" data-hook="code">{ code.to_owned() }</p>
            <CopyText text={code.to_owned()} label={voice.text("page-code")} rows=1 hook="code" />
            <CopyText text={link.clone()} label={voice.text("instructor-link")} rows=2 hook="link" />
            <Square text={link.clone()} />
            <div class="row">
                <button type="button" class="go" onclick={print} data-act="print">{ voice.text("instructor-print") }</button>
            </div>
            { printed(voice, order, code, &link) }
        </>
    }
}

/// The sheet on paper. On the screen the card above says the same.
fn printed(voice: &Voice, order: &Order, code: &str, link: &str) -> Html {
    html! {
        <article class="report handed" aria-hidden="true">
            <h1>{ voice.text("instructor-paper-title") }</h1>
            <p class="big-code">{ code.to_owned() }</p>
            <p class="link">{ link.to_owned() }</p>
            <Square text={link.to_owned()} />
            <ol>
                <li>{ voice.text("instructor-paper-open") }</li>
                <li>{ voice.text("instructor-paper-name") }</li>
                <li>{ voice.text("instructor-paper-work") }</li>
                <li>{ voice.text("instructor-paper-hand-in") }</li>
            </ol>
            if order.mode == Mode::Exam { <Expect order={order.clone()} /> }
            <p class="paper-caution">{ CAUTION }</p>
        </article>
    }
}

/// Where this page is, with the drill behind it.
fn link_to(code: &str) -> String {
    let here = window().location().href().unwrap_or_default();
    format!("{}#/drill/{code}", here.split('#').next().unwrap_or_default())
}

fn save_button(
    label: &str,
    hook: &'static str,
    voice: &Voice,
    kind: &str,
    order: &Order,
    text: String,
) -> Html {
    let name = file_name(&[kind, &order.seed.to_string()], "json");
    let onclick = Callback::from(move |_: MouseEvent| {
        let _ = save(&name, "application/json", &text);
    });
    html! { <button type="button" {onclick} data-act={hook}>{ voice.text(label) }</button> }
}
