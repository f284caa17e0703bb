//! The house's main valve, where its water comes in. It is drawn here and turned among the taps.

use yew::prelude::*;

use super::pipes::valve;
use crate::text;

/// The valve as it stands.
pub fn main_valve(opening: f64) -> Html {
    html! {
        <>
            { valve(24.0, 16.0, 11.0, opening) }
            <text x="42" y="31" class="lab">{ text::MAIN_SHORT }</text>
            if opening < 1.0 {
                <text x="42" y="44" class="sub">{ text::opening(opening) }</text>
            }
        </>
    }
}
