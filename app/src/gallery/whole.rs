//! Whole pages where they are something by themselves: the first one, a link's, those without a job; what stands at the
//! foot of a phone; files given and taken; an act taken back.

use std::rc::Rc;

use bench::Mode;
use drill::{Attempt, Order, Practice};
use gloo::utils::window;
use plant::{FaultId, HeaterModel, Location};
use yew::prelude::*;

use super::stand::{Opened, Stand, calls_in, frame, house, wide};
use super::worked::Worked;
use crate::debrief::tabs::{DebriefTabs, Tab};
use crate::debrief::{Debrief, HandIn};
use crate::doors::{Doors, Invited};
use crate::drill::no_job::NoJob;
use crate::drill::notes::Log;
use crate::drill::tabs::Tabs;
use crate::said::use_voice;
use crate::shell::{Busy, Unread};
use crate::show::Show;
use crate::show::start::Start;
use crate::store::{Head, World};

/// A job in a mode, after acts.
fn job(mode: Mode, acts: &str) -> Option<World> {
    let home = house(HeaterModel::Plain40, None, Location::Basement);
    Some(calls_in(mode, home, acts)?.pop()?.into())
}

/// Pages.
pub fn pages() -> Html {
    let under_way = |caption: &str, inside: Html| {
        job(Mode::Solo, "[]")
            .map(|session| wide(caption.to_owned(), html! { <Stand {session}>{ inside }</Stand> }))
    };
    html! {
        <>
            { wide("the first page", html! { <form><Doors /></form> }) }
            { under_way("the first page, a job under way", html! { <form><Doors /></form> }).unwrap_or_default() }
            { wide("a link that is none", html! { <Invited code="K7QD" /> }) }
            { wide("no job", html! { <NoJob /> }) }
            { wide("no job to look back at", html! { <Debrief /> }) }
            { under_way("a job that is not over", html! { <Debrief /> }).unwrap_or_default() }
            { wide("no job to show", html! { <Show /> }) }
            { wide("a fault to show", html! { <Start fault={FaultId::F13} /> }) }
            { under_way("a fault to show, a job under way", html! { <Start fault={FaultId::F13} /> }).unwrap_or_default() }
            { frame("tabs of a drill", html! { <Worked press={vec!["[data-tab=Meter]"]}>{ under_way("", html! { <Tabs /> }).unwrap_or_default() }</Worked> }) }
            { frame("tabs of a debrief", html! { <DebriefTabs tab={Tab::Steps} ontab={Callback::noop()} /> }) }
            <Files />
            { taken_back() }
        </>
    }
}

/// Something that could not be read lies on the device while this is shown.
#[component]
fn Files() -> Html {
    const KEY: &str = "tw.old.0.job";
    let voice = use_voice();
    use_memo((), |()| {
        let storage = window().local_storage().ok().flatten();
        // Where storage is blocked there is nothing to show.
        storage.map(|storage| storage.set_item(KEY, "{"))
    });
    use_effect_with((), |()| {
        || {
            let storage = window().local_storage().ok().flatten();
            drop(storage.map(|storage| storage.remove_item(KEY)));
        }
    });
    let attempt = |learner: &str| Rc::new(Attempt::new(learner, Order::chance(7, Mode::Solo)));
    html! {
        <>
            { frame("unread", html! { <Unread /> }) }
            { frame("unread, in brief", html! { <Unread brief=true /> }) }
            { frame("handing in", html! { <Opened><HandIn attempt={attempt("Bench 4")} /></Opened> }) }
            { frame("handing in, no name, copied", html! {
                <Worked press={vec![".hand-in summary", "[data-act=copy-attempt]"]}><HandIn attempt={attempt("")} /></Worked>
            }) }
            { frame("computing, how far", html! { <div class="paused"><Busy said={voice.text("page-dealing")} done=0.4 onstop={Callback::noop()} /></div> }) }
        </>
    }
}

/// The last act of a coached job that can be taken back, one that the coach stopped, and how many were.
fn taken_back() -> Html {
    const BARE: &str = r#"[{"do":"cover","which":"lower","off":true},{"do":"cover","which":"lower-insulation","off":true},{"do":"cover","which":"lower-shield","off":true}"#;
    let one = |caption: &str, mode: Mode, acts: String, practice: Practice| {
        job(mode, &acts).map(|session| {
            let head = Head { attempt: "1".into(), practice, ..Head::default() };
            frame(
                caption.to_owned(),
                html! { <Stand session={session.clone()} {head}><Log {session} /></Stand> },
            )
        })
    };
    let none = Practice::default();
    let touched = format!("{BARE},{}]", r#"{"do":"touch","at":{"what":"metal","point":"D1"}}"#);
    let all = [
        one("may be taken back", Mode::Coached, format!("{BARE}]"), none),
        one("stopped by the coach: stays", Mode::Coached, touched, none),
        one("taken back once", Mode::Coached, format!("{BARE}]"), Practice { taken_back: 1, ..none }),
        one(
            "carried over, taken back often",
            Mode::Coached,
            format!("{BARE}]"),
            Practice { carried: 2, taken_back: 7 },
        ),
        one("carried over, alone", Mode::Solo, format!("{BARE}]"), Practice { carried: 3, ..none }),
    ];
    all.into_iter().flatten().collect()
}
