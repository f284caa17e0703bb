//! What was wrong, what puts it right, and what the customer is left with.

use std::rc::Rc;

use yew::prelude::*;

use super::sheet::Sheet;
use crate::glossary::Marked;
use crate::route::Route;
use crate::said::use_voice;

/// The job.
#[derive(Properties, PartialEq)]
pub struct Props {
    /// The job.
    pub sheet: Rc<Sheet>,
}

/// The verdict.
#[component]
pub fn VerdictCard(props: &Props) -> Html {
    let voice = use_voice();
    let verdict = &props.sheet.verdict;
    let row = |name: &str, text: String| {
        html! { <><dt>{ voice.text(name) }</dt><dd><Marked {text} /></dd></> }
    };
    let sources = format!("{}/{}", Route::Sources.href(), props.sheet.fault.name().to_ascii_lowercase());
    html! {
        <section class="verdict" aria-label={voice.text("debrief-verdict")}>
            <dl>
                { row("debrief-fault", verdict.fault.clone()) }
                if let Some(second) = &verdict.second {
                    { row("debrief-second-fault", second.clone()) }
                }
                { row("debrief-remedy", verdict.remedy.clone()) }
                { row("debrief-finding", verdict.finding.clone()) }
                { row("debrief-ending", verdict.ending.clone()) }
                <dt>{ voice.text("debrief-customer") }</dt>
                <dd>{ list(&verdict.customer) }</dd>
                if !verdict.traces.is_empty() {
                    <dt>{ voice.text("debrief-traces") }</dt>
                    <dd>{ list(&verdict.traces) }</dd>
                }
            </dl>
            <a class="source-link" href={sources}>{ voice.text("sources-score") }</a>
        </section>
    }
}

fn list(lines: &[String]) -> Html {
    html! { <ul>{ for lines.iter().map(|line| html! { <li>{ line }</li> }) }</ul> }
}
