//! The instructor's page.

use yew::prelude::*;

use crate::route::Route;
use crate::shell::{Footer, Top};
use crate::text;

/// The instructor's page.
#[component]
pub fn Instructor() -> Html {
    html! {
        <div class="page">
            <Top tag="Instructor" />
            <main class="doors" id="main">
                <h1>{ "Instructor" }</h1>
                <a class="button" href={Route::Doors.href()}>{ text::TO_DOORS }</a>
            </main>
            <Footer />
        </div>
    }
}
