//! Letting time pass.

use bench::Action;
use yew::prelude::*;

use crate::drill::place::{Offer, Offers};
use crate::said::use_language;
use crate::text;

/// How long one may wait, in minutes.
const WAITS: [f64; 9] = [5.0, 1.0, 2.0, 10.0, 20.0, 30.0, 60.0, 120.0, 240.0];

/// Waiting.
#[component]
pub fn Time() -> Html {
    use_language();
    let waits = WAITS.map(|minutes| (text::minutes(minutes), Action::Wait { minutes }));
    let offers = vec![
        Offer::choose(text::WAIT, text::WAIT_VERB, waits),
        Offer::plain(Action::WaitForCutOut, text::WAIT_CUT_OUT),
    ];
    html! { <div class="time"><Offers title={text::TIME} {offers} /></div> }
}
