//! Acts offered together under a heading: buttons, and lists where an act has a number to choose.

use bench::Action;
use yew::prelude::*;

use crate::glossary::Marked;
use crate::shell::{Act, Choice, Choices, act_slug, use_share};
use crate::store::{Msg, use_steady};

/// One thing offered.
#[derive(Clone, PartialEq)]
pub enum Offer {
    /// A button.
    Do {
        /// What it does.
        action: Action,
        /// What it says.
        label: AttrValue,
        /// It shows a state that holds now.
        pressed: Option<bool>,
    },
    /// A button that does several things one after another.
    All {
        /// The first of them.
        first: Action,
        /// The others.
        then: Vec<Action>,
        /// What it says.
        label: AttrValue,
    },
    /// A list with a button.
    Choose {
        /// Its label.
        label: AttrValue,
        /// What stands on the button.
        verb: AttrValue,
        /// What the button is called, heard by itself: the same words and more.
        says: AttrValue,
        /// What each costs; empty for nothing.
        price: AttrValue,
        /// The acts with their names, the first one chosen at first.
        options: Vec<(AttrValue, Action)>,
    },
}

impl Offer {
    /// A plain button.
    pub fn plain(action: Action, label: impl Into<AttrValue>) -> Self {
        Self::Do { action, label: label.into(), pressed: None }
    }

    /// A button for something that is so, or not.
    pub fn toggle(action: Action, label: impl Into<AttrValue>, on: bool) -> Self {
        Self::Do { action, label: label.into(), pressed: Some(on) }
    }

    /// What it says.
    pub fn label(&self) -> AttrValue {
        match self {
            Self::Do { label, .. } | Self::All { label, .. } | Self::Choose { label, .. } => label.clone(),
        }
    }

    /// A list.
    pub fn choose(
        label: impl Into<AttrValue>,
        verb: impl Into<AttrValue>,
        says: impl Into<AttrValue>,
        options: impl IntoIterator<Item = (String, Action)>,
    ) -> Self {
        let options = options.into_iter().map(|(name, action)| (name.into(), action)).collect();
        let price = AttrValue::default();
        Self::Choose { label: label.into(), verb: verb.into(), says: says.into(), price, options }
    }

    /// The same with what each of a list costs.
    pub fn priced(mut self, dollars: f64) -> Self {
        if let Self::Choose { price, .. } = &mut self {
            *price = format!("${dollars:.0}").into();
        }
        self
    }
}

/// Lists drawn in one turn.
const EACH_TURN: usize = 6;

/// Offers under a heading.
#[derive(Properties, PartialEq)]
pub struct Props {
    /// The heading; empty for none.
    #[prop_or_default]
    pub title: AttrValue,
    /// What is offered.
    pub offers: Vec<Offer>,
    /// The caution that goes with it.
    #[prop_or_default]
    pub caution: Option<AttrValue>,
    /// Two beside each other.
    #[prop_or_default]
    pub pairs: bool,
    /// What the row of buttons is called where no heading says it.
    #[prop_or_default]
    pub name: AttrValue,
    /// Buttons before all others.
    #[prop_or_default]
    pub children: Html,
}

/// The offers.
#[component]
pub fn Offers(props: &Props) -> Html {
    let (lists, buttons): (Vec<_>, Vec<_>) =
        props.offers.iter().partition(|one| matches!(one, Offer::Choose { .. }));
    let share = use_share(lists.len(), EACH_TURN);
    let name = if props.title.is_empty() { &props.name } else { &props.title };
    html! {
        <div class="offers">
            if !props.title.is_empty() {
                <h3><Marked text={&props.title} /></h3>
            }
            if let Some(caution) = &props.caution {
                <p class="warn">{ caution }</p>
            }
            if !buttons.is_empty() {
                <div class={classes!("acts", props.pairs.then_some("pairs"))} role="toolbar" aria-label={name}>
                    { props.children.clone() }
                    { for buttons.into_iter().enumerate().map(one_offer) }
                </div>
            }
            { lists.into_iter().take(share).enumerate().map(one_offer).collect::<Html>() }
        </div>
    }
}

/// Keyed by its place: a button that turns into its own reverse stays the same one and keeps the focus.
fn one_offer((at, offer): (usize, &Offer)) -> Html {
    match offer {
        Offer::Do { action, label, pressed } => {
            html! { <Act key={at} action={action.clone()} {label} pressed={*pressed} /> }
        }
        Offer::All { first, then, label } => {
            html! { <Act key={at} action={first.clone()} then={then.clone()} {label} /> }
        }
        Offer::Choose { label, verb, says, price, options } => {
            html! { <Chooser key={at} {label} {verb} {says} {price} options={options.clone()} /> }
        }
    }
}

/// A list with a button.
#[derive(Properties, PartialEq)]
struct ChooserProps {
    label: AttrValue,
    verb: AttrValue,
    says: AttrValue,
    price: AttrValue,
    options: Vec<(AttrValue, Action)>,
}

#[component]
fn Chooser(props: &ChooserProps) -> Html {
    let changes = use_steady().changes;
    let chosen = use_state(|| 0usize);
    let at = if *chosen < props.options.len() { *chosen } else { 0 };
    // Each option is known by its act.
    let slugs: Vec<String> = props.options.iter().map(|(_, action)| act_slug(action)).collect();
    let choices: Vec<Choice> = slugs
        .iter()
        .zip(&props.options)
        .map(|(slug, (name, _))| Choice::new(slug.clone(), name.clone()))
        .collect();
    let (Some((_, action)), Some(slug)) = (props.options.get(at), slugs.get(at).cloned()) else {
        return html! {};
    };
    let onchange = {
        let (chosen, slugs) = (chosen.clone(), slugs.clone());
        Callback::from(move |value: String| {
            chosen.set(slugs.iter().position(|slug| *slug == value).unwrap_or(0));
        })
    };
    let onclick = {
        let action = action.clone();
        Callback::from(move |_| changes.dispatch(Msg::Do(vec![action.clone()])))
    };
    html! {
        <div class="chooser">
            <Choices label={&props.label} price={&props.price} {choices} chosen={slug.clone()} {onchange} hook={&props.label} />
            <button
                type="button"
                class="act"
                data-act={slug}
                aria-label={&props.says}
                {onclick}
            >
                { &props.verb }
            </button>
        </div>
    }
}
