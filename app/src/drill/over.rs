//! Notices across the drill: the job is over, the device keeps nothing, a kept job was cut short.

use yew::prelude::*;

use crate::route::Route;
use crate::shell::Unread;
use crate::store::use_work;
use crate::text;

/// The notices, most of the time none.
#[component]
pub fn Over() -> Html {
    let work = use_work();
    let ended = work.session().and_then(|session| session.ended);
    let keeping = text::keeping(work.keeping);
    if ended.is_none() && keeping.is_none() && work.broken.is_none() {
        return html! {};
    }
    html! {
        <div class="notices">
            if let Some(how) = ended {
                <p class="over" role="status">
                    { text::ended(how) }{ " " }
                    <a class="button" href={Route::Debrief.href()}>{ text::DEBRIEF }</a>
                </p>
            }
            if let Some(said) = keeping {
                <p class="keeping" role="alert">{ said }</p>
            }
            if let Some(step) = work.broken {
                <p class="keeping" role="alert">{ text::broken(step) }{ " " }<Unread brief=true /></p>
            }
        </div>
    }
}
