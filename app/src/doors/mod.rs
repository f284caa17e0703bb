//! The doors: practise alone, exam, instructor.

use yew::prelude::*;

use crate::route::Route;
use crate::shell::{ClearDevice, Footer, Top};
use crate::store::use_work;
use crate::{begin, demo, text};

/// Which door was asked for.
#[derive(Properties, PartialEq)]
pub struct Props {
    /// The exam's door.
    #[prop_or_default]
    pub exam: bool,
}

/// The doors.
#[component]
pub fn Doors(props: &Props) -> Html {
    let _ = props.exam;
    let work = use_work();
    let start = {
        let work = work.clone();
        Callback::from(move |_| {
            if begin::begin(&work, demo::NAME, "").is_ok() {
                Route::Drill.open();
            }
        })
    };
    html! {
        <div class="page">
            <Top />
            <main class="doors" id="main">
                <h1>{ text::DOORS_TITLE }</h1>
                <p>{ text::DOORS_LEAD }</p>
                <button type="button" class="go" data-act="practise" onclick={start}>{ text::PRACTISE }</button>
                if work.running.is_some() {
                    <a class="button" href={Route::Drill.href()}>{ text::CONTINUE }</a>
                    <ClearDevice />
                }
            </main>
            <Footer />
        </div>
    }
}
