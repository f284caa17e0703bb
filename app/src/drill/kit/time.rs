//! Letting time pass.

use bench::Action;
use yew::prelude::*;

use crate::drill::place::{Offer, Offers};
use crate::said::use_language;
use crate::text;

/// How long one mostly waits, in minutes: a button each.
const MOSTLY: [f64; 4] = [5.0, 10.0, 30.0, 60.0];
/// How long else one may wait, in minutes.
const WAITS: [f64; 5] = [1.0, 2.0, 20.0, 120.0, 240.0];

/// How long the people of the house may be let use water, in minutes.
const LIVING: [f64; 5] = [60.0, 120.0, 240.0, 480.0, 1440.0];

/// Waiting. Nobody draws hot water while a technician works, unless he lets them.
#[component]
pub fn Time() -> Html {
    use_language();
    let waits = WAITS.map(|minutes| (text::minutes(minutes), Action::Wait { minutes }));
    let mut offers: Vec<Offer> =
        MOSTLY.map(|minutes| Offer::plain(Action::Wait { minutes }, text::minutes(minutes))).into();
    offers.push(Offer::plain(Action::WaitForCutOut, text::WAIT_CUT_OUT));
    offers.push(Offer::choose(text::WAIT, text::WAIT_VERB, text::WAIT_VERB, waits));
    let living = LIVING.map(|minutes| (text::minutes(minutes), Action::LetThemUse { minutes }));
    offers.push(Offer::choose(text::USE_WATER, text::USE_WATER_VERB, text::LET_THEM_USE, living));
    html! { <div class="time"><Offers title={text::TIME} {offers} /></div> }
}
