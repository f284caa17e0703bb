//! Where a job is taken, and the room's view of one under way.

use drill::Order;
use plant::{HeaterModel, Location};
use yew::prelude::*;

use super::stand::{Opened, Stand, call, calls, frame, house, running, wide};
use crate::doors::first::First;
use crate::doors::practise::Practise;
use crate::doors::resume::Resume;
use crate::doors::{Enter, Ready};
use crate::show::inside::Inside;
use crate::store::World;

/// Acts of a job that a room is shown.
const SHOWN: &str = r#"[{"do":"tap","tap":"kitchen","opening":1.0},{"do":"wait","minutes":9.0},{"do":"tap","tap":"kitchen","opening":0.0},{"do":"breaker","slot":2,"on":false},{"do":"wait","minutes":8.0},{"do":"breaker","slot":2,"on":true},{"do":"wait","minutes":12.0}]"#;

/// The doors, everything unfolded; a job to go on with and one that is over; the sheet before the start in each mode.
pub fn doors() -> Html {
    let onorder = Callback::<Order>::noop();
    let resume = |caption: &str, acts: &str| {
        call(house(HeaterModel::Plain40, None, Location::Basement), acts)
            .map(|session| frame(caption.to_owned(), html! { <Stand {session}><Resume /></Stand> }))
            .unwrap_or_default()
    };
    let ready = |order: &str| {
        Order::read(order).ok().map(|order| {
            frame(format!("ready, {:?}", order.mode), html! { <Ready {order} onback={Callback::noop()} /> })
        })
    };
    html! {
        <>
            { resume("under way", r#"[{"do":"tell-household"}]"#) }
            { resume("over", r#"[{"do":"hand-over"}]"#) }
            { frame("first", html! { <First /> }) }
            { frame("practise", html! { <Opened><Practise onorder={onorder.clone()} /></Opened> }) }
            { frame("enter", html! { <Opened><Enter {onorder} /></Opened> }) }
            { for [
                r#"{"seed": 7, "mode": "coached"}"#,
                r#"{"seed": 7, "mode": "solo", "limit-minutes": 90}"#,
                r#"{"seed": 7, "mode": "exam", "limit-minutes": 90, "clock-minutes": 30}"#,
            ].into_iter().filter_map(ready) }
        </>
    }
}

/// A job played before a room, act after act.
#[component]
fn Played() -> Html {
    let states = use_memo((), |()| {
        let states = calls(house(HeaterModel::Plain40, None, Location::Basement), SHOWN).unwrap_or_default();
        states.into_iter().map(World::from).collect::<Vec<_>>()
    });
    let at = use_state(|| 0_usize);
    {
        let (at, last) = (at.clone(), states.len().saturating_sub(1));
        use_effect_with(*at, move |now| {
            if *now < last {
                at.set(now + 1);
            }
        });
    }
    let Some(running) = states.get(*at).cloned().and_then(running) else { return html! {} };
    html! { <div class="show"><div class="show-main"><Inside {running} /></div></div> }
}

/// The demonstration view.
pub fn show() -> Html {
    wide("inside view", html! { <Played /> })
}
