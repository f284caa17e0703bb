//! The finding: the one thing wrong, on the steps ticked in the log.

use bench::Action;
use plant::FaultId;
use yew::prelude::*;

use crate::shell::{Act, Choice, Choices};
use crate::store::{World, use_work};
use crate::text;

/// Stands for nothing wrong.
const NOTHING: &str = "nothing";

/// The world.
#[derive(Properties, PartialEq)]
pub struct Props {
    /// The world.
    pub session: World,
}

/// The form.
#[component]
pub fn FindingForm(props: &Props) -> Html {
    let work = use_work();
    let chosen = use_state(String::new);
    let nothing = Choice::new(NOTHING, text::NOTHING_WRONG);
    let faults = FaultId::ALL.iter().map(|&fault| Choice::new(fault.name(), text::fault(fault)));
    let choices: Vec<Choice> = std::iter::once(nothing).chain(faults).collect();
    let onchange = use_callback(chosen.setter(), |value: String, chosen| chosen.set(value));
    let evidence: Vec<u32> = work.desk.ticks.iter().copied().collect();
    let said = text::evidence_count(evidence.len());
    let fault = chosen.parse::<FaultId>().ok();
    let action = (!chosen.is_empty()).then_some(Action::Finding { fault, evidence });
    html! {
        <section class="finding-part" aria-label={text::FINDING}>
            <h2>{ text::FINDING }</h2>
            <div class="card">
                if let Some(last) = props.session.me.findings.last() {
                    <p class="written">{ text::written(last.fault) }</p>
                }
                <Choices
                    label={text::WRONG}
                    {choices}
                    chosen={(*chosen).clone()}
                    none={Some(AttrValue::from(text::CHOOSE))}
                    {onchange}
                    hook="finding"
                />
                <p class="sub">{ said }</p>
                if let Some(action) = action {
                    <Act {action} label={text::WRITE_FINDING} class="go" />
                }
            </div>
        </section>
    }
}
