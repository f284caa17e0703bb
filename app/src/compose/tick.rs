//! A box to tick, and a row of which one is chosen.

use web_sys::HtmlInputElement;
use yew::prelude::*;

/// A box to tick.
#[derive(Properties, PartialEq)]
pub struct TickProps {
    /// What it says.
    pub label: AttrValue,
    /// Ticked.
    pub on: bool,
    /// Told when it changes.
    pub onchange: Callback<bool>,
    /// A name for tests.
    pub hook: AttrValue,
}

/// The box.
#[component]
pub fn Tick(props: &TickProps) -> Html {
    let told = props.onchange.clone();
    let onchange = Callback::from(move |event: Event| {
        told.emit(event.target_unchecked_into::<HtmlInputElement>().checked());
    });
    html! {
        <label class="option">
            <input type="checkbox" checked={props.on} {onchange} data-tick={&props.hook} />
            <span>{ &props.label }</span>
        </label>
    }
}

/// Some of which one is chosen.
#[derive(Properties, PartialEq)]
pub struct RadiosProps {
    /// What is chosen here.
    pub legend: AttrValue,
    /// The group's name, its own on the page.
    pub name: AttrValue,
    /// Values, names, and a line about each (empty for none).
    pub choices: Vec<(AttrValue, AttrValue, AttrValue)>,
    /// The value chosen.
    pub chosen: AttrValue,
    /// Told the value chosen.
    pub onchange: Callback<AttrValue>,
}

/// The group.
#[component]
pub fn Radios(props: &RadiosProps) -> Html {
    html! {
        <fieldset class="radios">
            <legend>{ &props.legend }</legend>
            { for props.choices.iter().map(|one| radio(props, one)) }
        </fieldset>
    }
}

fn radio(props: &RadiosProps, (value, label, note): &(AttrValue, AttrValue, AttrValue)) -> Html {
    let onchange = {
        let (told, value) = (props.onchange.clone(), value.clone());
        Callback::from(move |_: Event| told.emit(value.clone()))
    };
    html! {
        <label class="option" key={value.as_str()}>
            <input
                type="radio"
                name={&props.name}
                value={value}
                checked={*value == props.chosen}
                {onchange}
            />
            <span>
                <b>{ label }</b>
                if !note.is_empty() {
                    <small>{ note }</small>
                }
            </span>
        </label>
    }
}
