//! The meter's dial.

use bench::MeterFunction;
use yew::prelude::*;

use crate::store::{Msg, Setting, use_work};
use crate::text;

const SETTINGS: [Setting; 7] = [
    Setting::Leads(MeterFunction::Volts),
    Setting::Leads(MeterFunction::LowVolts),
    Setting::Leads(MeterFunction::Ohms),
    Setting::Leads(MeterFunction::Continuity),
    Setting::Leads(MeterFunction::Insulation),
    Setting::Leads(MeterFunction::Amps),
    Setting::Clamp,
];

/// The dial.
#[component]
pub fn Dial() -> Html {
    let work = use_work();
    let button = |setting: Setting| {
        let on = work.desk.setting == setting;
        let onclick = {
            let work = work.clone();
            Callback::from(move |_| work.dispatch(Msg::Set(setting)))
        };
        html! {
            <button type="button" data-setting={setting.name()} aria-pressed={on.to_string()} {onclick}>
                { text::setting(setting) }
            </button>
        }
    };
    html! { <div class="fn" role="toolbar" aria-label={text::METER_DIAL}>{ for SETTINGS.map(button) }</div> }
}
