//! A fault to be shown, from the atlas: a coached drill in the house that the atlas walks.

use bench::Mode;
use drill::Order;
use plant::fault::FaultId;
use yew::prelude::*;

use crate::away::Asked;
use crate::begin;
use crate::compose::name_drill;
use crate::said::use_voice;
use crate::shell::Busy;
use crate::store::use_work;
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
    let asked = use_mut_ref(|| None::<Asked>);
    let dealing = use_state(|| false);
    let problem = use_state(String::new);
    let fault = props.fault;
    let under_way = work.session().is_some_and(|session| session.ended.is_none());
    let onclick = {
        let (work, asked) = (work.clone(), asked.clone());
        let (dealing, problem) = (dealing.setter(), problem.setter());
        Callback::from(move |_: MouseEvent| {
            let Some(house) = drill::showcase(fault) else { return };
            let order = Order { mode: Mode::Coached, ..house.order };
            dealing.set(true);
            let (dealing, problem) = (dealing.clone(), problem.clone());
            let told = Callback::from(move |result: Result<(), String>| {
                dealing.set(false);
                if let Err(why) = result {
                    problem.set(why);
                }
            });
            *asked.borrow_mut() = Some(begin::begin(&work, &name_drill(&order), "", told));
        })
    };
    let onstop = {
        let dealing = dealing.setter();
        Callback::from(move |()| dealing.set(false))
    };
    html! {
        <section class="card narrow">
            <h1>{ format!("{fault} {}", text::fault(fault)) }</h1>
            <p>{ voice.text("show-about") }</p>
            if under_way {
                <p class="warn">{ voice.text("page-gives-up") }</p>
            }
            if !problem.is_empty() {
                <p class="warn" role="alert">{ &*problem }</p>
            }
            if *dealing {
                <Busy said={voice.text("page-dealing")} {onstop} />
            } else {
                <button type="button" class="go" data-act="show-start" {onclick}>{ voice.text("show-start") }</button>
            }
        </section>
    }
}
