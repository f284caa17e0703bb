//! The page of the doors, and the page that a drill's link opens.

use drill::Order;
use yew::prelude::*;

use super::first::First;
use super::practise::Practise;
use super::resume::Resume;
use super::{Enter, Ready};
use crate::compose::read_drill;
use crate::route::Route;
use crate::said::use_voice;
use crate::shell::{Footer, Top, Unread};

/// The doors.
#[component]
pub fn Doors() -> Html {
    let voice = use_voice();
    let chosen = use_state(|| None);
    let back = {
        let chosen = chosen.setter();
        Callback::from(move |()| chosen.set(None))
    };
    let onorder = {
        let chosen = chosen.setter();
        Callback::from(move |order: Order| chosen.set(Some(order)))
    };
    let body = match &*chosen {
        Some(order) => html! { <Ready order={order.clone()} onback={back} /> },
        None => html! {
            <>
                <h1>{ voice.text("page-doors-title") }</h1>
                <p class="lead">{ voice.text("page-doors-lead") }</p>
                <Resume />
                <Unread />
                <First />
                <div class="door-grid">
                    <Practise onorder={onorder.clone()} />
                    <div class="door-column">
                        <Enter {onorder} />
                        { link(&voice, "exam", Route::Exam) }
                        { link(&voice, "instructor", Route::Instructor) }
                    </div>
                </div>
            </>
        },
    };
    html! {
        <div class="page">
            <Top />
            <main class="doors" id="main">{ body }</main>
            <Footer />
        </div>
    }
}

/// A door that is a page of its own.
fn link(voice: &words::Voice, name: &str, to: Route) -> Html {
    let text = |what: &str| voice.text(&format!("page-door-{name}{what}"));
    html! {
        <section class="card door" data-door={name.to_owned()}>
            <h2>{ text("") }</h2>
            <p>{ text("-about") }</p>
            <a class="button" href={to.href()}>{ text("-open") }</a>
        </section>
    }
}

/// What follows `#/drill/` in the address.
#[derive(Properties, PartialEq)]
pub struct InvitedProps {
    /// The code.
    pub code: AttrValue,
}

/// The page that a drill's link opens: what the drill is, a name, and a start.
#[component]
pub fn Invited(props: &InvitedProps) -> Html {
    let voice = use_voice();
    let onback = Callback::from(|()| Route::Doors.open());
    let body = match read_drill(&props.code) {
        Ok(order) => html! { <Ready {order} {onback} /> },
        Err(problem) => html! {
            <section class="card narrow">
                <h1>{ voice.text("page-link-wrong") }</h1>
                <p class="warn" role="alert">{ problem }</p>
                <a class="button" href={Route::Doors.href()}>{ voice.text("page-to-doors") }</a>
            </section>
        },
    };
    html! {
        <div class="page">
            <Top />
            <main class="doors" id="main">{ body }</main>
            <Footer />
        </div>
    }
}
