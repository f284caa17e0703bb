//! Taking the last act back, in a coached drill.

use yew::prelude::*;

use crate::begin;
use crate::said::use_voice;
use crate::store::{World, use_work};
use crate::turns::Turns;

/// The world.
#[derive(Properties, PartialEq)]
pub struct Props {
    /// The world.
    pub session: World,
}

/// The button, where an act can be taken back; how many were.
#[component]
pub fn TakeBack(props: &Props) -> Html {
    let voice = use_voice();
    let work = use_work();
    let folding = use_mut_ref(|| None::<Turns>);
    let practice = work.running.as_ref().map(|running| running.head.practice).unwrap_or_default();
    let onclick = {
        let (work, slot) = (work.clone(), folding);
        Callback::from(move |_| {
            let done = slot.clone();
            let told = Callback::from(move |()| drop(done.borrow_mut().take()));
            *slot.borrow_mut() = begin::take_back(&work, told);
        })
    };
    let may = begin::may_take_back(&props.session);
    if !may && practice.is_none() {
        return html! {};
    }
    html! {
        <div class="take-back">
            if may {
                <button type="button" data-act="take-back" {onclick}>{ voice.text("job-take-back") }</button>
            }
            if practice.carried > 0 {
                <span class="sub">{ voice.filled("job-carried", &[("step", practice.carried.into())]) }</span>
            }
            if practice.taken_back > 0 {
                <span class="sub" role="status">
                    { voice.filled("job-taken-back", &[("count", practice.taken_back.into())]) }
                </span>
            }
        </div>
    }
}
