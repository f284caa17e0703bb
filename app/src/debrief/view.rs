//! A debrief laid out: accounts over drawing and inspector; on a phone one section at a time.

use std::rc::Rc;

use yew::prelude::*;

use super::accounts::Accounts;
use super::drawing::Drawing;
use super::inspector::Inspector;
use super::report::Report;
use super::sayings::Sayings;
use super::sheet::Sheet;
use super::steps::Steps;
use super::tabs::{DebriefTabs, Tab};
use super::verdict::VerdictCard;

/// The job.
#[derive(Properties, PartialEq)]
pub struct Props {
    /// The job.
    pub sheet: Rc<Sheet>,
    /// What stands beside it: handing in, or nothing.
    #[prop_or_default]
    pub children: Html,
}

/// The layout.
#[component]
pub fn SheetView(props: &Props) -> Html {
    let sheet = &props.sheet;
    let step = use_state(|| sheet.opening_step());
    let tab = use_state(Tab::default);
    let onstep = {
        let step = step.setter();
        Callback::from(move |number| step.set(number))
    };
    let to_inside = {
        let (step, tab) = (step.setter(), tab.setter());
        Callback::from(move |number| {
            step.set(number);
            tab.set(Tab::Inside);
        })
    };
    let ontab = {
        let tab = tab.setter();
        Callback::from(move |one| tab.set(one))
    };
    html! {
        <>
            <div class={classes!("debrief", format!("show-{}", tab.name()))}>
                <p class="part headline">{ &sheet.verdict.headline }</p>
                <div class="part account-part">
                    <Accounts sheet={sheet.clone()} onstep={to_inside.clone()} />
                    <Sayings sheet={sheet.clone()} onstep={to_inside.clone()} />
                </div>
                <div class="part inside-part"><Drawing sheet={sheet.clone()} step={*step} onstep={onstep.clone()} /></div>
                <div class="part look-part"><Inspector sheet={sheet.clone()} step={*step} onstep={onstep} /></div>
                <div class="part verdict-part"><VerdictCard sheet={sheet.clone()} /></div>
                <div class="part steps-part"><Steps sheet={sheet.clone()} step={*step} onstep={to_inside} /></div>
                <div class="part report-part">{ props.children.clone() }</div>
            </div>
            <DebriefTabs tab={*tab} {ontab} />
            <Report sheet={sheet.clone()} />
        </>
    }
}
