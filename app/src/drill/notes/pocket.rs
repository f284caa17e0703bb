//! The pocket card: amperes and ohms of an element by its watts and volts, as the stamp has them.

use plant::heater::Rating;
use quantity::{Volts, Watts};
use yew::prelude::*;

use crate::said::use_voice;

/// Ratings on the market of an electric heater's elements (common practice, no source).
const WATTS: [f64; 7] = [1500.0, 2000.0, 2500.0, 3500.0, 3800.0, 4500.0, 5500.0];
/// Voltages that a heater is rated for.
const VOLTS: [f64; 4] = [120.0, 208.0, 240.0, 277.0];

/// The card, folded until it is wanted.
#[component]
pub fn PocketCard() -> Html {
    let voice = use_voice();
    let figures = |watts: f64, volts: f64| {
        let rating = Rating { watts: Watts(watts), volts: Volts(volts) };
        let amps = format!("{:.1}", rating.current().get());
        let ohms = format!("{:.1}", rating.resistance().get());
        html! { <td key={volts.to_string()}>{ voice.filled("pocket-amps", &[("amps", amps.into())]) }<br />{ voice.filled("pocket-ohms", &[("ohms", ohms.into())]) }</td> }
    };
    html! {
        <details class="pocket" data-act="pocket">
            <summary>{ voice.text("pocket-title") }</summary>
            <div class="wide-table" tabindex="0" role="region" aria-label={voice.text("pocket-title")}>
                <table class="card">
                    <thead>
                        <tr>
                            <th scope="col">{ voice.text("pocket-watts") }</th>
                            { for VOLTS.map(|volts| html! { <th scope="col">{ voice.filled("pocket-volts", &[("volts", format!("{volts:.0}").into())]) }</th> }) }
                        </tr>
                    </thead>
                    <tbody>
                        { for WATTS.map(|watts| html! {
                            <tr key={watts.to_string()}>
                                <th scope="row">{ format!("{watts:.0}") }</th>
                                { for VOLTS.map(|volts| figures(watts, volts)) }
                            </tr>
                        }) }
                    </tbody>
                </table>
            </div>
            <p class="sub">{ voice.text("pocket-rules") }</p>
            <p class="sub">{ voice.text("pocket-caution") }</p>
        </details>
    }
}
