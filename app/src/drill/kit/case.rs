//! The kit: what is worn, hung on, screwed on.

use bench::Action;
use plant::Place;
use yew::prelude::*;

use super::time::Time;
use crate::drill::place::go;
use crate::shell::Act;
use crate::store::{World, use_work};
use crate::text;

/// The world.
#[derive(Properties, PartialEq)]
pub struct Props {
    /// The world.
    pub session: World,
}

/// The kit.
#[component]
pub fn Kit(props: &Props) -> Html {
    let work = use_work();
    let session = &props.session;
    let (me, plumbing) = (&session.me, &session.home.plant.plumbing);
    let locked = session.home.plant.panel.breakers.iter().any(|one| one.locked);
    let to = |place: Place| {
        let work = work.clone();
        Callback::from(move |_: MouseEvent| go(&work, place))
    };
    html! {
        <section class="kit-part" aria-label={text::KIT}>
            <h2>{ text::KIT }</h2>
            <div class="kit" role="toolbar" aria-label={text::KIT}>
                <button type="button" data-act="lock-and-tag" aria-pressed={locked.to_string()} onclick={to(Place::LoadCenter)}>
                    { text::LOCK_AND_TAG }
                </button>
                <Act action={Action::Gloves { on: !me.gloves }} label={text::GLOVES} pressed={Some(me.gloves)} />
                <Act action={Action::EyeProtection { on: !me.eyes }} label={text::EYES} pressed={Some(me.eyes)} />
                <Act action={Action::Hose { on: !plumbing.hose }} label={text::HOSE_KIT} pressed={Some(plumbing.hose)} />
                <Act action={Action::Gauge { on: !me.gauge }} label={text::GAUGE_KIT} pressed={Some(me.gauge)} />
                <Act action={Action::ReadGauge} label={text::READ_GAUGE} />
                <Act action={Action::TryStart} label={text::TRY_START} />
                <button type="button" data-act="parts-van" onclick={to(Place::Van)}>{ text::place(Place::Van) }</button>
            </div>
            <Time />
        </section>
    }
}
