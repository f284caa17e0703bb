//! "Finish and clear this device": for a computer that others use too.

use yew::prelude::*;

use super::{Dialog, use_dialog};
use crate::route::Route;
use crate::store::{Msg, clear, use_work};
use crate::text;

/// The button with its question.
#[component]
pub fn ClearDevice() -> Html {
    let work = use_work();
    let asked = use_dialog();
    if work.running.is_none() {
        return html! {};
    }
    let onclick = {
        let asked = asked.clone();
        Callback::from(move |_| {
            asked.close();
            work.dispatch(Msg::Kept(clear()));
            work.dispatch(Msg::Cleared);
            Route::Doors.open();
        })
    };
    html! {
        <>
            <button type="button" data-act="clear-asked" onclick={asked.opener()}>{ text::CLEAR }</button>
            <Dialog handle={asked.clone()} title={text::CLEAR}>
                <p>{ text::CLEAR_ASKED }</p>
                <div class="row">
                    <button type="button" class="go" data-act="clear" {onclick}>{ text::CLEAR }</button>
                    <button type="button" onclick={asked.closer()}>{ text::NOT_YET }</button>
                </div>
            </Dialog>
        </>
    }
}
