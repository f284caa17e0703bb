//! The terms in the page's language, fetched once, and the dialog that explains one.

use std::rc::Rc;

use words::Language;
use yew::platform::spawn_local;
use yew::prelude::*;

use super::terms::Terms;
use crate::route::Route;
use crate::said::{use_language, use_voice};
use crate::shell::{Dialog, use_dialog};
use crate::text;

/// What components of the page know of the terms.
#[derive(Clone, PartialEq)]
pub struct Held {
    /// The terms, once they are here.
    pub terms: Option<Rc<Terms>>,
    /// They could not be had.
    pub failed: bool,
    /// Explains one of them.
    pub explain: Callback<usize>,
}

/// Children that may call [`use_terms`].
#[derive(Properties, PartialEq)]
pub struct Props {
    /// The page.
    pub children: Html,
}

/// Fetches the terms and holds them for the page. Without them no term is marked.
#[component]
pub fn TermsProvider(props: &Props) -> Html {
    let language = use_language();
    let here = use_state(|| None::<(Language, Option<Rc<Terms>>)>);
    let shown = use_state(|| None::<usize>);
    let dialog = use_dialog();
    {
        let here = here.setter();
        use_effect_with(language, move |language| {
            let language = *language;
            spawn_local(async move {
                let found = text::beside(&format!("assets/words/terms-{}.txt", language.short())).await;
                here.set(Some((language, found.map(|found| Rc::new(Terms::read(&found))))));
            });
        });
    }
    let explain = {
        let (shown, dialog) = (shown.setter(), dialog.clone());
        use_callback((), move |at: usize, ()| {
            shown.set(Some(at));
            dialog.open();
        })
    };
    let came = here.as_ref().filter(|(of, _)| *of == language);
    let terms = came.and_then(|(_, terms)| terms.clone());
    let failed = came.is_some() && terms.is_none();
    let term = terms.as_ref().zip(*shown).and_then(|(terms, at)| terms.all.get(at).cloned());
    let held = Held { terms, failed, explain };
    html! {
        <ContextProvider<Held> context={held}>
            { props.children.clone() }
            <Explained {term} {dialog} />
        </ContextProvider<Held>>
    }
}

/// What is explained.
#[derive(Properties, PartialEq)]
pub struct ExplainedProps {
    /// The term; none yet.
    pub term: Option<super::terms::Term>,
    /// The dialog.
    pub dialog: crate::shell::DialogHandle,
}

/// The dialog. It stands empty until a term is asked for.
#[component]
pub fn Explained(props: &ExplainedProps) -> Html {
    let voice = use_voice();
    let (name, means) = match &props.term {
        Some(term) => (text::capital(&term.name), term.means.clone()),
        None => (voice.text("glossary-title"), String::new()),
    };
    let href = props
        .term
        .as_ref()
        .map_or_else(String::new, |term| format!("{}/{}", Route::Glossary.href(), term.id));
    html! {
        <Dialog handle={props.dialog.clone()} title={name}>
            <p class="term-means">{ means }</p>
            <p><a {href} onclick={props.dialog.closer()}>{ voice.text("glossary-all") }</a></p>
        </Dialog>
    }
}

/// The terms, from inside the page.
#[hook]
pub fn use_terms() -> Option<Held> {
    use_context::<Held>()
}
