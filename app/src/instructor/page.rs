//! The instructor's page: one half hands out, the other reads in.

use yew::prelude::*;

use super::collect::Collect;
use super::hand_out::HandOut;
use crate::route::{Route, use_address};
use crate::said::use_voice;
use crate::shell::{Footer, Top};

/// What follows `#/instructor/` for the half that reads attempts.
const ATTEMPTS: &str = "attempts";

/// The page.
#[component]
pub fn Instructor() -> Html {
    let voice = use_voice();
    let collecting = use_address().rest == ATTEMPTS;
    let link = |name: &str, href: String, here: bool| {
        html! {
            <a class="half" {href} aria-current={here.then_some("page")}>{ voice.text(name) }</a>
        }
    };
    let base = Route::Instructor.href();
    html! {
        <div class="page">
            <Top tag={voice.text("page-door-instructor")}>
                <nav class="halves" aria-label={voice.text("instructor-halves")}>
                    { link("instructor-hand-out", base.to_owned(), !collecting) }
                    { link("instructor-collect", format!("{base}/{ATTEMPTS}"), collecting) }
                </nav>
            </Top>
            <main class="desk" id="main">
                if collecting { <Collect /> } else { <HandOut /> }
            </main>
            <Footer />
        </div>
    }
}
