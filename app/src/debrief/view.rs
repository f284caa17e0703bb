//! A debrief laid out: accounts over drawing and inspector; on a phone one section at a time.

use std::rc::Rc;

use yew::prelude::*;

use super::accounts::Accounts;
use super::drawing::Drawing;
use super::figures::Figures;
use super::inspector::Inspector;
use super::ladder::LadderView;
use super::report::Report;
use super::sayings::Sayings;
use super::section::Section;
use super::sheet::Sheet;
use super::steps::Steps;
use super::strip::Strip;
use super::tabs::{DebriefTabs, Tab};
use super::verdict::VerdictCard;

/// The job.
#[derive(Properties, PartialEq)]
pub struct Props {
    /// The job.
    pub sheet: Rc<Sheet>,
    /// Told from which step the job shall be worked again; absent where it is somebody else's.
    #[prop_or_default]
    pub onfrom: Option<Callback<u32>>,
    /// What stands beside it: handing in, or nothing.
    #[prop_or_default]
    pub children: Html,
}

/// The layout.
#[component]
pub fn SheetView(props: &Props) -> Html {
    let sheet = &props.sheet;
    let at = use_state(|| sheet.picture.after(sheet.opening_step()));
    let step = sheet.picture.samples.get(*at).map_or(0, |one| one.step);
    let tab = use_state(Tab::default);
    let onat = {
        let at = at.setter();
        Callback::from(move |to| at.set(to))
    };
    let onstep = {
        let (at, sheet) = (at.setter(), sheet.clone());
        Callback::from(move |number| at.set(sheet.picture.after(number)))
    };
    let to_inside = {
        let (onstep, tab) = (onstep.clone(), tab.setter());
        Callback::from(move |number| {
            onstep.emit(number);
            tab.set(Tab::Inside);
        })
    };
    let shown = *tab == Tab::Inside;
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
                <div class="part inside-part">
                    <Drawing sheet={sheet.clone()} at={*at} {shown} onstep={onstep.clone()} />
                    <Figures sheet={sheet.clone()} at={*at} />
                </div>
                <div class="part replay-part">
                    <Section sheet={sheet.clone()} at={*at} />
                    <LadderView sheet={sheet.clone()} at={*at} {shown} />
                </div>
                <div class="part look-part"><Inspector sheet={sheet.clone()} {step} {onstep} onfrom={props.onfrom.clone()} /></div>
                <div class="part verdict-part"><VerdictCard sheet={sheet.clone()} /></div>
                <div class="part steps-part"><Steps sheet={sheet.clone()} {step} onstep={to_inside} /></div>
                <div class="part report-part">{ props.children.clone() }</div>
            </div>
            <Strip sheet={sheet.clone()} at={*at} {onat} {shown} />
            <DebriefTabs tab={*tab} {ontab} />
            <Report sheet={sheet.clone()} />
        </>
    }
}
