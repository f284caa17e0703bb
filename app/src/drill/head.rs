//! The drill's header: the job, the time of day, a hint, handing over.

use std::rc::Rc;

use ::drill::Drill;
use bench::Action;
use yew::prelude::*;

use super::guide::{GuideSwitch, Guided};
use super::here::sheet::HereSheet;
use super::hint::hint;
use crate::glossary::Marked;
use crate::here::HereButton;
use crate::route::Route;
use crate::shell::{Act, Dialog, Top, use_dialog};
use crate::store::{World, use_work};
use crate::{text, units};

/// The world.
#[derive(Properties, PartialEq)]
pub struct Props {
    /// The drill.
    pub drill: Rc<Drill>,
    /// The world.
    pub session: World,
}

/// The header.
#[component]
pub fn Head(props: &Props) -> Html {
    // A finding stands on steps that are ticked for it, until it is written.
    let ticked = !use_work().desk.ticks.is_empty();
    let session = &props.session;
    let hand_over = use_dialog();
    let hints = use_dialog();
    let title = text::job_title(&props.drill.title);
    let here = {
        let session = session.clone();
        Callback::from(move |onclose| html! { <HereSheet session={session.clone()} {onclose} /> })
    };
    let clock = units::clock(session.job.starts_at + session.clock);
    html! {
        <>
            <Top tag={text::mode(session.job.mode)} here={false}>
                <span class="job">{ title }</span>
                <span class="licence">{ text::LICENCE }{ ": " }{ text::licence(session.job.licence) }</span>
                <span class="clock"><span class="unseen">{ text::CLOCK }</span>{ clock }</span>
                <HereButton sheet={here} />
                if Guided::of(&props.drill.order).is_some() {
                    <GuideSwitch />
                }
                if text::may_hint(session.job.mode) {
                    <a class="button to-show" href={Route::Show.href()} data-act="show">{ text::SHOW }</a>
                    <button type="button" class="hint" data-act="hint" onclick={hints.opener()}>
                        { brief(text::HINT, text::HINT_SHORT) }
                    </button>
                }
                <button type="button" class="go" data-act="hand-over-asked" onclick={hand_over.opener()}>
                    { brief(text::HAND_OVER, text::HAND_OVER_SHORT) }
                </button>
            </Top>
            <Dialog handle={hints} title={text::HINT}>
                <p><Marked text={hint(session)} /></p>
            </Dialog>
            <Dialog handle={hand_over.clone()} title={text::HAND_OVER}>
                <p>{ text::HAND_OVER_ASKED }</p>
                if ticked && session.me.findings.is_empty() {
                    <p class="warn">{ text::UNWRITTEN }</p>
                }
                <div class="row" onclick={hand_over.closer()}>
                    <Act action={Action::HandOver} label={text::HAND_OVER} class="go" />
                    <button type="button">{ text::NOT_YET }</button>
                </div>
            </Dialog>
        </>
    }
}

/// What a button says, and what it says on a phone.
fn brief(long: text::Label, short: text::Label) -> Html {
    html! { <><span class="long">{ long }</span><span class="short">{ short }</span></> }
}
