//! Every fault by name, with a search.

use ::words::letters::small;
use plant::fault::FaultId;
use web_sys::HtmlInputElement;
use yew::prelude::*;

use crate::route::Route;
use crate::said::use_voice;

/// The list.
#[component]
pub fn Index() -> Html {
    let voice = use_voice();
    let words = use_state(String::new);
    let oninput = {
        let words = words.setter();
        Callback::from(move |event: InputEvent| {
            words.set(event.target_unchecked_into::<HtmlInputElement>().value());
        })
    };
    let named = |id: &FaultId| format!("{id} {}", voice.fault(*id));
    let has = |id: &&FaultId| {
        let name = small(&named(id));
        small(&words).split_whitespace().all(|word| name.contains(word))
    };
    let shown: Vec<&FaultId> = FaultId::ALL.iter().filter(has).collect();
    html! {
        <>
            <h1>{ voice.text("atlas-title") }</h1>
            <p class="lead">{ voice.text("atlas-lead") }</p>
            <p class="note">{ voice.text("atlas-caution") }</p>
            <form role="search" onsubmit={|event: SubmitEvent| event.prevent_default()}>
                <label class="field">
                    <span>{ voice.text("atlas-search") }</span>
                    <input type="search" value={(*words).clone()} {oninput} autocomplete="off" data-field="atlas" />
                </label>
            </form>
            <p class="found" role="status">
                { voice.filled("atlas-found", &[("count", (shown.len() as u32).into())]) }
            </p>
            <ol class="atlas-list">
                { for shown.iter().map(|id| html! {
                    <li key={id.name()}>
                        <a href={format!("{}/{}", Route::Atlas.href(), id.name())}>
                            <b>{ id.name() }</b><span>{ voice.fault(**id) }</span>
                        </a>
                    </li>
                }) }
            </ol>
            <details class="atlas-pairs">
                <summary>{ voice.text("atlas-pairs") }</summary>
                <p>{ voice.text("atlas-pairs-about") }</p>
                <img src="assets/asked/pairs.svg" loading="lazy" width="732" height="732" alt={voice.text("atlas-pairs-alt")} />
            </details>
        </>
    }
}
