//! What each page around the drill offers, in the order of the page, under the names that stand on it.

use yew::prelude::*;

use super::{Setting, Switch};
use crate::route::Route;
use crate::said::{use_speech, use_voice};
use crate::shell::coming;
use crate::store::Rest;

/// Something on the page: the message it is headed by, and the one that says what it is for.
type Offer = (&'static str, &'static str);

/// What is the same on every page.
pub const ANYWHERE: [Offer; 3] = [
    ("help-look-up", "help-look-up-about"),
    ("help-speech", "help-speech-about"),
    ("help-kept", "help-kept-about"),
];

/// What a page offers beside that.
pub const fn offers(route: Route) -> &'static [Offer] {
    match route {
        Route::Doors => &[
            ("page-door-first", "help-doors-first"),
            ("page-door-practise", "help-doors-practise"),
            ("page-door-code", "help-doors-code"),
            ("page-door-exam", "help-doors-exam"),
            ("page-door-instructor", "help-doors-instructor"),
        ],
        // The sheet of a drill says what its place offers; this is the card before it.
        Route::Drill => &[("help-ready", "help-ready-about")],
        Route::Debrief => &[
            ("debrief-accounts", "help-debrief-accounts"),
            ("debrief-strip", "help-debrief-strip"),
            ("debrief-inspector", "help-debrief-inspector"),
            ("debrief-from-here", "help-debrief-from"),
            ("debrief-steps", "help-debrief-steps"),
            ("debrief-print", "help-debrief-print"),
            ("page-hand-in", "help-debrief-hand-in"),
        ],
        Route::Instructor => &[
            ("instructor-hand-out", "help-instructor-hand-out"),
            ("page-door-exam", "help-instructor-exam"),
            ("instructor-collect", "help-instructor-collect"),
            ("instructor-open", "help-instructor-step"),
            ("instructor-csv", "help-instructor-csv"),
        ],
        Route::Exam => &[
            ("page-door-code", "help-doors-code"),
            ("help-ready", "help-ready-about"),
            ("page-exam-over", "page-exam-over-lead"),
        ],
        Route::Sources => &[("sources-search", "help-sources-search"), ("sources-kind", "help-sources-row")],
        Route::Atlas => &[
            ("atlas-search", "help-atlas-search"),
            ("atlas-beside", "help-atlas-entry"),
            ("atlas-alike", "help-atlas-alike"),
        ],
        Route::Glossary => {
            &[("glossary-seek", "help-glossary-search"), ("glossary-here", "help-glossary-here")]
        }
        Route::Show => &[("show-acts", "help-show-acts")],
    }
}

/// The page.
#[derive(Properties, PartialEq)]
pub struct Props {
    /// Which.
    pub route: Route,
}

/// What a page offers.
#[component]
pub fn PageHere(props: &Props) -> Html {
    let voice = use_voice();
    let rest = use_speech().rest;
    if rest != Rest::Here {
        return coming(rest == Rest::Failed);
    }
    let list = |title: &str, all: &[Offer]| {
        let title = voice.text(title);
        html! {
            <section aria-label={title.clone()}>
                <h3>{ title }</h3>
                <dl class="here-list">
                    { for all.iter().map(|(name, about)| html! {
                        <div><dt>{ voice.text(name) }</dt><dd>{ voice.text(about) }</dd></div>
                    }) }
                </dl>
            </section>
        }
    };
    html! {
        <div class="here-body">
            { list("help-here", offers(props.route)) }
            { list("help-anywhere", &ANYWHERE) }
            <Switch of={Setting::Key} />
        </div>
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::text::voice;
    use crate::units::Units;

    #[test]
    fn every_page_says_what_it_offers() {
        let voice = voice(Units::Us);
        for route in Route::ALL {
            let all: Vec<_> = offers(route).iter().chain(&ANYWHERE).collect();
            for (at, (name, about)) in all.iter().enumerate() {
                assert!(voice.has(name) && voice.has(about), "{name}, {about}");
                assert!(all[..at].iter().all(|(before, _)| before != name), "{name} twice");
            }
            assert!(all.len() > ANYWHERE.len(), "{route:?}");
        }
    }
}
