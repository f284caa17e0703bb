//! A labelled list to choose one thing from.

use web_sys::HtmlSelectElement;
use yew::prelude::*;

/// One thing to choose.
#[derive(Clone, PartialEq)]
pub struct Choice {
    /// Its value, unique in the list.
    pub value: AttrValue,
    /// What it says.
    pub label: AttrValue,
    /// The group it stands in; empty for none.
    pub group: AttrValue,
}

impl Choice {
    /// A choice without a group.
    pub fn new(value: impl Into<AttrValue>, label: impl Into<AttrValue>) -> Self {
        Self { value: value.into(), label: label.into(), group: AttrValue::default() }
    }
}

/// A list with its label.
#[derive(Properties, PartialEq)]
pub struct Props {
    /// Its label.
    pub label: AttrValue,
    /// What its things cost; empty for nothing.
    #[prop_or_default]
    pub price: AttrValue,
    /// What there is to choose.
    pub choices: Vec<Choice>,
    /// The value chosen now; empty for none.
    #[prop_or_default]
    pub chosen: AttrValue,
    /// What stands there while none is chosen.
    #[prop_or_default]
    pub none: Option<AttrValue>,
    /// Told the value chosen.
    pub onchange: Callback<String>,
    /// A name for tests.
    #[prop_or_default]
    pub hook: AttrValue,
}

/// The list, as the browser's own select: keyboard, touch and screen readers know it.
#[component]
pub fn Choices(props: &Props) -> Html {
    let onchange = {
        let told = props.onchange.clone();
        Callback::from(move |event: Event| {
            told.emit(event.target_unchecked_into::<HtmlSelectElement>().value())
        })
    };
    html! {
        <label class="choice">
            <span>
                { &props.label }
                if !props.price.is_empty() { { " " }<span class="price">{ &props.price }</span> }
            </span>
            // Once a hand has chosen from it, it no longer follows which of them is marked as selected.
            <select {onchange} ~value={&*props.chosen} data-choice={&props.hook}>
                if let Some(none) = &props.none {
                    <option value="" selected={props.chosen.is_empty()}>{ none }</option>
                }
                { groups(props) }
            </select>
        </label>
    }
}

fn groups(props: &Props) -> Html {
    let mut groups: Vec<(AttrValue, Vec<Html>)> = Vec::new();
    for choice in &props.choices {
        let selected = choice.value == props.chosen;
        let option = html! { <option value={&choice.value} {selected}>{ &choice.label }</option> };
        match groups.last_mut().filter(|(name, _)| *name == choice.group) {
            Some((_, options)) => options.push(option),
            None => groups.push((choice.group.clone(), vec![option])),
        }
    }
    groups
        .into_iter()
        .map(|(name, options)| {
            if name.is_empty() {
                html! { <>{ for options }</> }
            } else {
                html! { <optgroup label={name}>{ for options }</optgroup> }
            }
        })
        .collect()
}
