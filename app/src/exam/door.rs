//! The exam's door: a code or a file from the instructor.

use bench::Mode;
use drill::Order;
use yew::prelude::*;

use crate::doors::{Enter, Ready};
use crate::route::Route;
use crate::said::use_voice;
use crate::shell::{Footer, Top};

/// The page.
#[component]
pub fn ExamDoor() -> Html {
    let voice = use_voice();
    let chosen = use_state(|| None);
    let problem = use_state(|| false);
    let onorder = {
        let (chosen, problem) = (chosen.setter(), problem.setter());
        Callback::from(move |order: Order| {
            problem.set(order.mode != Mode::Exam);
            chosen.set(Some(order).filter(|order| order.mode == Mode::Exam));
        })
    };
    let onback = {
        let chosen = chosen.setter();
        Callback::from(move |()| chosen.set(None))
    };
    let body = match &*chosen {
        Some(order) => html! { <Ready order={order.clone()} {onback} /> },
        None => html! {
            <>
                <h1>{ voice.text("page-door-exam") }</h1>
                <p class="lead">{ voice.text("page-exam-lead") }</p>
                if *problem {
                    <p class="warn" role="alert">
                        { voice.text("page-exam-not") }{ " " }
                        <a href={Route::Doors.href()}>{ voice.text("page-to-doors") }</a>
                    </p>
                }
                <div class="door-grid"><Enter {onorder} /></div>
            </>
        },
    };
    html! {
        <div class="page">
            <Top tag={voice.text("page-door-exam")} />
            <main class="doors" id="main">{ body }</main>
            <Footer />
        </div>
    }
}
