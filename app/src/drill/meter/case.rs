//! The meter.

use bench::Action;
use yew::prelude::*;

use super::dial::Dial;
use super::display::Display;
use super::leads::{ClampAround, Leads};
use super::prove::Prove;
use crate::shell::act_slug;
use crate::store::{Msg, Setting, World, use_work};
use crate::text;

/// The world.
#[derive(Properties, PartialEq)]
pub struct Props {
    /// The world.
    pub session: World,
}

/// The meter with everything on it.
#[component]
pub fn Meter(props: &Props) -> Html {
    let work = use_work();
    let reading = work.desk.reading();
    let caution = reading.as_ref().and_then(text::act_caution);
    let slug = reading.as_ref().map(act_slug);
    let clamping = work.desk.setting == Setting::Clamp;
    let missing = reading.is_none();
    let label = match (missing, clamping) {
        (false, _) => text::TAKE_READING,
        (true, true) => text::PLACE_CLAMP,
        (true, false) => text::PLACE_LEADS,
    };
    let take = Callback::from(move |_| {
        if let Some(action) = work.desk.reading() {
            work.dispatch(Msg::Do(vec![action]));
        }
    });
    html! {
        <section class="meter-part" id="meter" tabindex="-1" aria-label={text::METER}>
            <h2>{ text::METER }</h2>
            <div class="card meter">
                <Display session={props.session.clone()} />
                <Dial />
                if clamping {
                    <ClampAround session={props.session.clone()} />
                } else {
                    <Leads session={props.session.clone()} />
                }
                if let Some(caution) = caution {
                    <p class="warn">{ caution }</p>
                }
                <button type="button" class="go wide" data-act="take-reading" data-reading={slug} aria-disabled={missing.to_string()} onclick={take}>
                    { label }
                </button>
                <Prove />
            </div>
        </section>
    }
}

/// The act of a step, if it used the meter or the clamp.
pub fn used_meter(action: &Action) -> bool {
    matches!(action, Action::Meter { .. } | Action::Clamp { .. } | Action::ProveMeter { .. })
}
