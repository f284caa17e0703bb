//! A button that does an act of the world.

use bench::Action;
use serde_json::Value;
use yew::prelude::*;

use crate::store::{Msg, use_steady};
use crate::text;

/// An act on a button.
#[derive(Properties, PartialEq)]
pub struct Props {
    /// What it does.
    pub action: Action,
    /// What it does after that, one after another as long as each is done.
    #[prop_or_default]
    pub then: Vec<Action>,
    /// What it says.
    pub label: AttrValue,
    /// How it looks beside the common look.
    #[prop_or_default]
    pub class: Classes,
    /// It shows a state that holds now: the lock is on, the gloves are on.
    #[prop_or_default]
    pub pressed: Option<bool>,
    /// It carries its caution in words.
    #[prop_or_default]
    pub cautioned: bool,
}

/// The button. Never disabled: the world answers with a reason when it cannot be done.
#[component]
pub fn Act(props: &Props) -> Html {
    let changes = use_steady().changes;
    let onclick = {
        let all: Vec<Action> = std::iter::once(&props.action).chain(&props.then).cloned().collect();
        Callback::from(move |_| changes.dispatch(Msg::Do(all.clone())))
    };
    let slug = act_slug(&props.action);
    let caution = props.cautioned.then(|| text::act_caution(&props.action)).flatten();
    html! {
        <>
            <button
                type="button"
                class={classes!("act", props.class.clone())}
                data-act={if props.then.is_empty() { slug } else { format!("all {slug}") }}
                aria-pressed={props.pressed.map(|on| on.to_string())}
                {onclick}
            >
                { &props.label }
            </button>
            if let Some(caution) = caution {
                <p class="warn">{ caution }</p>
            }
        </>
    }
}

/// An act as a short text that tests find it by: `breaker on=false slot=2`.
pub fn act_slug(action: &Action) -> String {
    let Value::Object(mut fields) = drill::json::value(action) else { return String::new() };
    let name = fields.remove("do").and_then(|name| name.as_str().map(str::to_owned)).unwrap_or_default();
    let mut words = vec![name];
    flatten(&Value::Object(fields), "", &mut words);
    words.join(" ")
}

fn flatten(value: &Value, name: &str, words: &mut Vec<String>) {
    match value {
        Value::Object(fields) => {
            // By name: that is how the object keeps them.
            for (key, value) in fields {
                let path = if name.is_empty() { key.clone() } else { format!("{name}.{key}") };
                flatten(value, &path, words);
            }
        }
        Value::String(text) => words.push(format!("{name}={text}")),
        other => words.push(format!("{name}={other}")),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use plant::Screw;

    #[test]
    fn an_act_has_a_slug_of_its_own() {
        assert_eq!(act_slug(&Action::TryStart), "try-start");
        assert_eq!(act_slug(&Action::Breaker { slot: 2, on: false }), "breaker on=false slot=2");
        let at = bench::Touchable::Metal { point: Screw::H1.into() };
        assert_eq!(act_slug(&Action::Touch { at }), "touch at.point=H1 at.what=metal");
    }
}
