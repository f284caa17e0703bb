//! The whole page: the address chooses what is shown.

use yew::prelude::*;

use crate::atlas::Atlas;
use crate::debrief::Debrief;
use crate::doors::{Doors, Invited};
use crate::drill::Drill;
use crate::exam::{ExamClock, ExamDoor};
use crate::glossary::{Glossary, TermsProvider};
use crate::instructor::Instructor;
use crate::route::{Route, use_address};
use crate::said::use_speech;
use crate::show::Show;
use crate::sources::Sources;
use crate::store::{Rest, WorkProvider};
use crate::text;

use super::{Reference, coming, use_later, use_toolbars};

/// The whole page.
#[component]
pub fn App() -> Html {
    use_toolbars();
    let asked = use_address();
    // A drill under way is a screenful: it is cleared away in two turns.
    let before = use_later(asked.clone());
    let parting = before.route == Route::Drill && asked.route != Route::Drill;
    let address = if parting { before } else { asked };
    #[cfg(debug_assertions)]
    if let Some(group) = crate::gallery::asked() {
        return html! { <WorkProvider><Title route={address.route} /><TermsProvider><crate::gallery::Gallery {group} /></TermsProvider></WorkProvider> };
    }
    let needs_all = !matches!(address.route, Route::Doors | Route::Drill);
    let page = match address.route {
        Route::Doors => html! { <Doors /> },
        Route::Drill if !address.rest.is_empty() => html! { <Invited code={address.rest.clone()} /> },
        Route::Drill => html! { <Drill {parting} /> },
        Route::Debrief => html! { <Debrief /> },
        Route::Instructor => html! { <Instructor /> },
        Route::Exam => html! { <ExamDoor /> },
        Route::Sources => html! { <Sources /> },
        Route::Atlas => html! { <Atlas /> },
        Route::Glossary => html! { <Glossary /> },
        Route::Show => html! { <Show /> },
    };
    html! {
        <WorkProvider>
            <Title route={address.route} />
            <ExamClock />
            <TermsProvider><Worded {needs_all}>{ page }</Worded></TermsProvider>
        </WorkProvider>
    }
}

/// A page, and whether it needs the whole book.
#[derive(Properties, PartialEq)]
struct WordedProps {
    needs_all: bool,
    children: Html,
}

/// A page once its words are here; a line meanwhile, or what to do when they could not be had.
#[component]
fn Worded(props: &WordedProps) -> Html {
    let rest = use_speech().rest;
    if !props.needs_all || rest == Rest::Here {
        return props.children.clone();
    }
    html! {
        <Reference>
            <h1 class="unseen">{ text::NAME }</h1>
            { coming(rest == Rest::Failed) }
        </Reference>
    }
}

/// What the window's title follows.
#[derive(Properties, PartialEq)]
struct TitleProps {
    route: Route,
}

/// The window's title and the document's language.
#[component]
fn Title(props: &TitleProps) -> Html {
    let speech = use_speech();
    use_effect_with((props.route, speech), |(route, speech)| {
        // What a page is called comes with the rest of the book.
        let here = speech.rest == Rest::Here;
        let title = if here { text::title(*route) } else { text::NAME.to_owned() };
        gloo::utils::document().set_title(&title);
        text::mark_document(speech.language);
    });
    html! {}
}
