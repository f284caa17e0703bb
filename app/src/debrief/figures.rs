//! What the drawings show at the chosen moment, in figures; and the marked moments as a table.

use std::rc::Rc;

use drill::debrief::Sample;
use quantity::Watts;
use words::Voice;
use yew::prelude::*;

use super::drawing::clock;
use super::sheet::Sheet;
use crate::said::use_voice;
use crate::shell::use_unfolded;

/// The job and the moment that is looked at.
#[derive(Properties, PartialEq)]
pub struct Props {
    /// The job.
    pub sheet: Rc<Sheet>,
    /// The chosen sample.
    pub at: usize,
}

/// Both.
#[component]
pub fn Figures(props: &Props) -> Html {
    let voice = use_voice();
    let Props { sheet, at } = props;
    let (unfolded, ontoggle) = use_unfolded();
    let Some(now) = sheet.picture.samples.get(*at) else { return html! {} };
    let cells = heads(&voice, sheet).into_iter().zip(values(&voice, sheet, now));
    html! {
        <section class="figures">
            <h2>{ voice.filled("debrief-figures", &[("clock", clock(sheet, now.at).into())]) }</h2>
            <dl>{ for cells.map(|(head, value)| html! { <div><dt>{ head }</dt><dd>{ value }</dd></div> }) }</dl>
            <details {ontoggle}>
                <summary>{ voice.text("debrief-table") }</summary>
                if unfolded { <Table sheet={sheet.clone()} /> }
            </details>
        </section>
    }
}

#[derive(Properties, PartialEq)]
struct TableProps {
    sheet: Rc<Sheet>,
}

/// Every moment that the drawing marks, after its act.
#[component]
fn Table(props: &TableProps) -> Html {
    let voice = use_voice();
    let sheet = &props.sheet;
    let rows = sheet.steps.iter().filter(|step| step.marked).filter_map(|step| {
        let sample = sheet.picture.samples.get(sheet.picture.after(step.number))?;
        Some(html! {
            <tr>
                <th scope="row">{ clock(sheet, step.at) }{ " " }{ &step.letter }{ " " }{ &step.what }</th>
                { for values(&voice, sheet, sample).into_iter().map(|one| html! { <td>{ one }</td> }) }
            </tr>
        })
    });
    html! {
        <div class="wide">
            <table>
                <thead>
                    <tr>
                        <th scope="col">{ voice.text("debrief-act") }</th>
                        { for heads(&voice, sheet).into_iter().map(|one| html! { <th scope="col">{ one }</th> }) }
                    </tr>
                </thead>
                <tbody>{ for rows }</tbody>
            </table>
        </div>
    }
}

/// What the figures are called, in order.
pub fn heads(voice: &Voice, sheet: &Sheet) -> Vec<String> {
    let controls = sheet.levels().iter().map(|at| sheet.fit(voice, &format!("debrief-control-{at}")));
    let elements = sheet.levels().iter().map(|at| sheet.fit(voice, &format!("debrief-element-{at}")));
    let mut all = vec![voice.text("debrief-at-top")];
    all.extend(controls);
    all.push(voice.text("debrief-at-tap"));
    all.extend(elements);
    all.extend([0, 1].map(|leg| sheet.rail(voice, leg)));
    all.extend([voice.text("debrief-fill"), voice.text("debrief-pressure")]);
    all
}

/// The figures of a moment, in the same order.
pub fn values(voice: &Voice, sheet: &Sheet, now: &Sample) -> Vec<String> {
    let units = voice.units();
    let degrees = |of: Option<_>| of.map_or_else(|| "–".to_owned(), |of| units.temperature(of));
    let levels = sheet.levels();
    let mut all = vec![degrees(now.top())];
    all.extend(levels.iter().map(|at| degrees(now.controls.get(at.index()).copied())));
    all.push(degrees(now.tap));
    all.extend(levels.iter().map(|at| units.watts(now.watts.get(at.index()).copied().unwrap_or(Watts(0.0)))));
    all.extend(now.legs.map(|amps| units.amps(amps)));
    all.extend([format!("{:.0} %", 100.0 * now.fill), units.pressure(now.pressure)]);
    all
}
