//! What can be told, advised, reported; whom to call instead of going on.

use bench::{Action, Helper, Observation, Session};
use plant::fault::Advice;
use plant::household::{Answer, Question};
use yew::prelude::*;

use super::questions::answer;
use crate::said::use_voice;
use crate::shell::{Act, Dialog, use_dialog};
use crate::store::World;
use crate::text;

/// The world.
#[derive(Properties, PartialEq)]
pub struct Props {
    /// The world.
    pub session: World,
}

const REPORTS: [Observation; 14] = [
    Observation::MislabelledBreaker,
    Observation::SecondSource,
    Observation::BrokenLead,
    Observation::NoExpansionControl,
    Observation::ScaldingWater,
    Observation::OversizedBreaker,
    Observation::PlasticDischarge,
    Observation::UphillDischarge,
    Observation::NoDielectric,
    Observation::NoPan,
    Observation::CappedDischarge,
    Observation::BlockedRelief,
    Observation::BridgedLimit,
    Observation::OtherElement,
];

const HELPERS: [Helper; 4] = [Helper::Electrician, Helper::Plumber, Helper::Utility, Helper::Ambulance];

/// What the parts cost so far, and the sum that these people named, once they were asked.
pub fn spent(session: &Session) -> String {
    let most = match answer(session, Question::Cost) {
        Some(Answer::Cost { ask_above }) => ask_above,
        _ => None,
    };
    text::cost(session.me.cost, most)
}

/// The lists.
#[component]
pub fn Tell(props: &Props) -> Html {
    let voice = use_voice();
    let me = &props.session.me;
    let calling = use_dialog();
    let advise = Advice::ALL.iter().map(|&advice| {
        html! { <li><Act action={Action::Advise { advice }} label={voice.advice(advice)} class="plain" /></li> }
    });
    let report = REPORTS.map(|what| {
        html! { <li><Act action={Action::Report { what }} label={voice.observation(what)} class="plain" /></li> }
    });
    let call = HELPERS.map(|whom| {
        html! { <Act action={Action::StopAndCall { whom }} label={text::capital(&text::helper(whom))} /> }
    });
    html! {
        <>
            <h2>{ text::TELL }</h2>
            <p class="sub">{ spent(&props.session) }</p>
            <div class="acts">
                <Act action={Action::TellHousehold} label={text::TELL_HOUSEHOLD} pressed={Some(me.household_told)} />
                <Act action={Action::AgreeCost} label={text::AGREE_COST} pressed={Some(me.cost_agreed)} />
                <Act action={Action::TellResult} label={text::TELL_RESULT} pressed={Some(me.result_told)} />
            </div>
            <div role="group" aria-label={voice.text("job-they-ask")}>
                <p>{ voice.hearsay(props.session.job.hearsay) }</p>
                <div class="acts">
                    <Act action={Action::Answer { so: true }} label={text::IS_SO} pressed={Some(me.answered == Some(true))} />
                    <Act action={Action::Answer { so: false }} label={text::IS_NOT_SO} pressed={Some(me.answered == Some(false))} />
                </div>
            </div>
            <details>
                <summary>{ text::ADVISE }</summary>
                <ul class="asks">{ for advise }</ul>
            </details>
            <details>
                <summary>{ text::REPORT }</summary>
                <ul class="asks">{ for report }</ul>
            </details>
            <button type="button" data-act="call-asked" onclick={calling.opener()}>{ text::CALL }</button>
            <Dialog handle={calling.clone()} title={text::CALL}>
                <p>{ text::CALL_ASKED }</p>
                <div class="acts" onclick={calling.closer()}>
                    { for call }
                    <button type="button">{ text::NOT_YET }</button>
                </div>
            </Dialog>
        </>
    }
}
