//! The service report: printed, never on the screen.

use std::rc::Rc;

use quantity::Seconds;
use words::Voice;
use yew::prelude::*;

use super::accounts::points;
use super::drawing::clock;
use super::sheet::{Account, Line, Sheet, Step};
use crate::compose::name_drill;
use crate::said::use_voice;
use crate::text::{self, CAUTION, act_caution};

/// The job.
#[derive(Properties, PartialEq)]
pub struct Props {
    /// The job.
    pub sheet: Rc<Sheet>,
}

/// The report.
#[component]
pub fn Report(props: &Props) -> Html {
    let voice = use_voice();
    let sheet = &props.sheet;
    let verdict = &sheet.verdict;
    let row = |name: &str, text: String| {
        html! { <tr><th scope="row">{ voice.text(name) }</th><td>{ text }</td></tr> }
    };
    // Each act's caution once, however often it was done.
    let mut cautions = CAUTION.to_string();
    for label in sheet.session.log.iter().filter_map(|entry| act_caution(&entry.action)) {
        let caution = label.to_string();
        if !cautions.contains(&caution) {
            cautions.push(' ');
            cautions += &caution;
        }
    }
    let code = name_drill(&sheet.attempt.order);
    let left = sheet.attempt.order.left_to_chance();
    let chance: Vec<String> = left.iter().map(|field| voice.text(&format!("page-choose-{field}"))).collect();
    let hours = [("from", clock(sheet, Seconds(0.0)).into()), ("until", clock(sheet, sheet.length()).into())];
    let plate = sheet.session.job.home.plant.plate;
    let heater = [
        ("size", sheet.speech.units.words().size(plate.nominal).into()),
        ("supply", text::supply(&plate).into()),
        ("elements", text::elements(&plate).into()),
    ];
    html! {
        <article class="report" aria-hidden="true">
            <h1>{ voice.text("debrief-report") }</h1>
            <table>
                { row("debrief-call", verdict.call.clone()) }
                { row("debrief-hours", voice.filled("debrief-hours-from", &hours)) }
                { row("job-plate", voice.filled("debrief-plate", &heater)) }
                { row("debrief-learner", sheet.attempt.learner.clone()) }
                if !code.starts_with('{') { { row("debrief-code", code) } }
                if !chance.is_empty() { { row("page-chance", chance.join(", ")) } }
                { row("job-customer-says", voice.complaint(&sheet.session.job.account)) }
                { row("debrief-fault", verdict.fault.clone()) }
                if let Some(second) = &verdict.second {
                    { row("debrief-second-fault", second.clone()) }
                }
                { row("debrief-remedy", verdict.remedy.clone()) }
                { row("debrief-finding", verdict.finding.clone()) }
                { row("debrief-ending", verdict.ending.clone()) }
                { row("debrief-customer", verdict.customer.join(" ")) }
                if !verdict.traces.is_empty() { { row("debrief-traces", verdict.traces.join(" ")) } }
            </table>
            <h2>{ voice.text("debrief-accounts") }</h2>
            { for sheet.accounts.iter().map(|one| account(&voice, sheet, one)) }
            <h2>{ voice.text("debrief-steps") }</h2>
            <table>{ for sheet.steps.iter().map(|step| act(sheet, step)) }</table>
            <p>{ cautions }</p>
        </article>
    }
}

fn account(voice: &Voice, sheet: &Sheet, one: &Account) -> Html {
    let lost = one.lines.iter().filter(|line| line.weighs());
    let when =
        |line: &Line| sheet.step(line.step).map(|step| clock(sheet, step.at) + " ").unwrap_or_default();
    html! {
        <>
            <h3>
                { &one.name }{ " " }{ points(one.got) }{ " " }
                { voice.filled("debrief-of", &[("of", points(one.of).into())]) }
            </h3>
            <ul>
                { for lost.map(|line| html! { <li>{ points(line.points) }{ " " }{ when(line) }{ &line.text }{ " " }{ &line.right }</li> }) }
            </ul>
        </>
    }
}

fn act(sheet: &Sheet, step: &Step) -> Html {
    let parts = [&step.what, &step.reading].into_iter().chain(&step.showed).chain(&step.harms);
    let said: Vec<&str> = parts.filter(|text| !text.is_empty()).map(String::as_str).collect();
    html! { <tr><td>{ clock(sheet, step.at) }</td><td>{ said.join(" · ") }</td></tr> }
}
