//! The learner's own list of suspects. The page never says whether it is right.

use plant::FaultId;
use yew::prelude::*;

use crate::shell::{Choice, Choices};
use crate::store::{Msg, Standing, Suspect, World, use_work};
use crate::{text, units};

/// The world.
#[derive(Properties, PartialEq)]
pub struct Props {
    /// The world.
    pub session: World,
}

/// The list.
#[component]
pub fn Suspects(props: &Props) -> Html {
    let work = use_work();
    let taken = |fault: FaultId| work.desk.suspects.iter().any(|one| one.fault == fault);
    let choices: Vec<Choice> = FaultId::ALL
        .iter()
        .filter(|fault| !taken(**fault))
        .map(|&fault| Choice::new(fault.name(), text::fault(fault)))
        .collect();
    let onchange = use_callback(work.dispatcher(), |value: String, work| {
        if let Ok(fault) = value.parse() {
            work.dispatch(Msg::Suspect(fault, Some(Standing::Open)));
        }
    });
    let starts = props.session.job.starts_at;
    let row = |one: &Suspect| {
        let since = units::clock(starts + one.since);
        let (fault, standing) = (one.fault, one.standing);
        let send = |to: Option<Standing>| {
            let work = work.clone();
            Callback::from(move |_: MouseEvent| work.dispatch(Msg::Suspect(fault, to)))
        };
        html! {
            <li key={fault.name()} class={standing.name()}>
                <span>{ text::fault(fault) }</span>
                <button type="button" onclick={send(Some(standing.next()))} data-suspect={fault.name()}>
                    <span class="unseen">{ text::fault(fault) }{ ": " }</span>
                    { text::stands(standing, &since) }
                </button>
                <button type="button" class="quiet" onclick={send(None)} aria-label={text::drop_suspect(fault)}>
                    { "×" }
                </button>
            </li>
        }
    };
    html! {
        <section class="suspects-part" aria-label={text::SUSPECTS}>
            <h2>{ text::SUSPECTS }</h2>
            <div class="card">
                <ul class="suspects">{ for work.desk.suspects.iter().map(row) }</ul>
                <Choices label={text::ADD_SUSPECT} {choices} none={Some(AttrValue::from(text::CHOOSE))} {onchange} hook="suspect" />
            </div>
        </section>
    }
}
