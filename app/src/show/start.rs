//! A fault to be shown, from the atlas: a coached drill in the house that the atlas walks.

use bench::Mode;
use drill::Order;
use plant::fault::FaultId;
use yew::prelude::*;

use crate::said::use_voice;
use crate::store::use_work;
use crate::taking::use_taking;
use crate::text;

/// Which fault.
#[derive(Properties, PartialEq)]
pub struct Props {
    /// Which.
    pub fault: FaultId,
}

/// The card. The page shows the job as soon as it is there.
#[component]
pub fn Start(props: &Props) -> Html {
    let voice = use_voice();
    let work = use_work();
    let taking = use_taking(Callback::noop());
    let fault = props.fault;
    let under_way = work.session().is_some_and(|session| session.ended.is_none());
    let onclick = {
        let taking = taking.clone();
        Callback::from(move |_: MouseEvent| {
            let Some(house) = drill::showcase(fault) else { return };
            taking.take(&Order { mode: Mode::Coached, ..house.order }, "");
        })
    };
    html! {
        <section class="card narrow">
            <h1>{ format!("{fault} {}", text::fault(fault)) }</h1>
            <p>{ voice.text("show-about") }</p>
            if under_way {
                <p class="warn">{ voice.text("page-gives-up") }</p>
            }
            { taking.problem() }
            { taking.or(html! {
                <button type="button" class="go" data-act="show-start" {onclick}>{ voice.text("show-start") }</button>
            }) }
        </section>
    }
}
