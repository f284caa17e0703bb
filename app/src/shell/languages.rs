//! The choice of language, in the header of every page.

use words::Language;
use yew::platform::spawn_local;
use yew::prelude::*;

use crate::store::{Msg, use_work};
use crate::text;

/// A button for each language that is not the one on the screen, in its own words.
#[component]
pub fn Languages() -> Html {
    let work = use_work();
    let failed = use_state(|| false);
    let others = Language::ALL.into_iter().filter(|language| *language != work.language);
    html! {
        <div class="languages" role="group" aria-label={text::LANGUAGE}>
            { for others.map(|language| {
                let (work, failed) = (work.clone(), failed.setter());
                let onclick = Callback::from(move |_: MouseEvent| {
                    let (work, failed) = (work.clone(), failed.clone());
                    spawn_local(async move {
                        let there = text::fetch(language).await;
                        failed.set(!there);
                        if there {
                            text::keep(language);
                            work.dispatch(Msg::Speak(language));
                        }
                    });
                });
                // Not keyed: the button that was pressed stays the same one and keeps the focus.
                html! {
                    <button type="button" class="quiet" lang={language.tag()} data-act="language" {onclick}>
                        { language.own_name() }
                    </button>
                }
            }) }
            if *failed {
                <p class="warn" role="alert">{ text::LANGUAGE_FAILED }</p>
            }
        </div>
    }
}
