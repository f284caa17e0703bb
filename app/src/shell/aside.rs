//! What could not be read of an earlier job: to be saved as a file, then cleared.

use yew::prelude::*;

use crate::files::save;
use crate::store::{Msg, clear, forget_unread, unread, use_work};
use crate::text;

/// Where it stands.
#[derive(Properties, PartialEq)]
pub struct Props {
    /// Beside a message that has said what it is: the button alone.
    #[prop_or_default]
    pub brief: bool,
}

/// The card; nothing where everything could be read.
#[component]
pub fn Unread(props: &Props) -> Html {
    let work = use_work();
    let unopened = work.unopened.is_some();
    let cleared = use_state(|| false);
    let found = use_memo((unopened, work.broken, *cleared), |(unopened, ..)| unread(*unopened));
    let Some(found) = (*found).clone() else { return html! {} };
    let keep = Callback::from(move |_: MouseEvent| {
        save("tankwright-unread.txt", "text/plain", &found);
    });
    let forget = Callback::from(move |_: MouseEvent| {
        if unopened {
            work.dispatch(Msg::Kept(clear()));
            work.dispatch(Msg::Cleared);
        }
        forget_unread();
        cleared.set(true);
    });
    let button =
        html! { <button type="button" data-act="save-unread" onclick={keep}>{ text::SAVE_UNREAD }</button> };
    if props.brief {
        return button;
    }
    html! {
        <section class="card resume" data-door="unread">
            <p>{ text::LEFT_UNREAD }</p>
            <div class="row">
                { button }
                <button type="button" data-act="clear-unread" onclick={forget}>{ text::CLEAR_UNREAD }</button>
            </div>
        </section>
    }
}
