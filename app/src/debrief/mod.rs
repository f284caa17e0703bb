//! The debrief's page.

use yew::prelude::*;

use crate::route::Route;
use crate::shell::{Footer, Top};
use crate::text;

/// The debrief's page.
#[component]
pub fn Debrief() -> Html {
    html! {
        <div class="page">
            <Top tag="Debrief" />
            <main class="doors" id="main">
                <h1>{ "Debrief" }</h1>
                <a class="button" href={Route::Doors.href()}>{ text::TO_DOORS }</a>
            </main>
            <Footer />
        </div>
    }
}
