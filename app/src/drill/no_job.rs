//! The drill's page without a job.

use yew::prelude::*;

use crate::route::Route;
use crate::shell::{Footer, Top, Unread};
use crate::store::use_work;
use crate::text;

/// What stands there without a job.
#[component]
pub fn NoJob() -> Html {
    let work = use_work();
    html! {
        <div class="page">
            <Top />
            <main class="doors" id="main">
                if work.opening {
                    <p class="lead" role="status">{ text::OPENING }</p>
                } else {
                    <h1>{ text::NO_JOB }</h1>
                }
                if let Some(why) = &work.unopened {
                    <p class="warn" role="alert">{ text::unopened(why) }</p>
                }
                <Unread />
                <a class="button" href={Route::Doors.href()}>{ text::TO_DOORS }</a>
            </main>
            <Footer />
        </div>
    }
}
