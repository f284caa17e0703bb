//! A box to tick, and a row of which one is chosen.

use web_sys::HtmlInputElement;
use yew::prelude::*;

/// A box to tick, what it says, and a name for tests. Told when it changes.
pub fn tick(label: String, on: bool, told: Callback<bool>, hook: String) -> Html {
    let onchange = Callback::from(move |event: Event| {
        told.emit(event.target_unchecked_into::<HtmlInputElement>().checked());
    });
    html! {
        <label class="option">
            <input type="checkbox" checked={on} {onchange} data-tick={hook} />
            <span>{ label }</span>
        </label>
    }
}

/// One of several: its value, its name, and a line about it (empty for none).
pub type Way = (AttrValue, AttrValue, AttrValue);

/// Several of which one is chosen, under a name that is the group's own on the page. Told the value chosen.
pub fn radios(
    legend: String,
    name: &'static str,
    ways: impl IntoIterator<Item = Way>,
    chosen: &str,
    told: &Callback<AttrValue>,
) -> Html {
    html! {
        <fieldset class="radios">
            <legend>{ legend }</legend>
            { for ways.into_iter().map(|one| radio(name, one, chosen, told.clone())) }
        </fieldset>
    }
}

fn radio(name: &'static str, (value, label, note): Way, chosen: &str, told: Callback<AttrValue>) -> Html {
    let checked = value == chosen;
    let onchange = {
        let value = value.clone();
        Callback::from(move |_: Event| told.emit(value.clone()))
    };
    html! {
        <label class="option" key={value.as_str()}>
            <input type="radio" {name} value={value.clone()} {checked} {onchange} />
            <span>
                <b>{ label }</b>
                if !note.is_empty() {
                    <small>{ note }</small>
                }
            </span>
        </label>
    }
}
