//! A setting of this device as a box to tick.

use web_sys::HtmlInputElement;
use yew::prelude::*;

use super::Setting;
use crate::said::use_voice;

/// What is switched.
#[derive(Properties, PartialEq)]
pub struct Props {
    /// What.
    pub of: Setting,
}

/// Switches something on this device.
#[component]
pub fn Switch(props: &Props) -> Html {
    let voice = use_voice();
    let of = props.of;
    let on = use_state(|| of.is_on());
    let onchange = {
        let on = on.clone();
        Callback::from(move |event: Event| {
            let now = event.target_unchecked_into::<HtmlInputElement>().checked();
            of.switch(now);
            on.set(now);
        })
    };
    html! {
        <label class="here-key">
            <input type="checkbox" checked={*on} {onchange} data-field={of.name()} />
            { voice.filled(of.name(), &[("key", "?".into())]) }
        </label>
    }
}
