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
use crate::shell::{use_frames, use_half_a_pace_later, use_paced, use_rest};

/// Frames in which a debrief is drawn.
const PARTS: usize = 12;

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
    // While a hand runs along the strip the plots follow at once, figures and replay keep pace, and the words
    // follow when it rests.
    let replayed = use_paced(*at);
    let live = use_half_a_pace_later(replayed);
    let rested = use_rest(*at);
    let step = sheet.picture.samples.get(rested).map_or(0, |one| one.step);
    let tab = use_state(Tab::default);
    // Always the same ones, so that what hears of none of it is not drawn again while the job is moved along.
    let told = use_memo((at.setter(), tab.setter(), sheet.clone()), told);
    let (onat, onstep, to_inside, ontab) = (*told).clone();
    let shown = *tab == Tab::Inside;
    // Part after part, from the top down, and at last what is only for paper. None is the eighth: the ladder, which is
    // drawn a turn after its part, has that frame for itself.
    let share = use_frames(PARTS);
    let part = |number: usize, inside: &dyn Fn() -> Html| {
        if share >= number {
            inside()
        } else {
            html! {}
        }
    };
    html! {
        <>
            <div class={classes!("debrief", format!("show-{}", tab.name()), (share < PARTS).then_some("filling"))}>
                <p class="part headline">{ &sheet.verdict.headline }</p>
                <div class="part account-part">
                    { part(1, &|| html! { <Accounts sheet={sheet.clone()} onstep={to_inside.clone()} /> }) }
                    { part(2, &|| html! { <Sayings sheet={sheet.clone()} onstep={to_inside.clone()} /> }) }
                </div>
                <div class="part inside-part">
                    { part(3, &|| html! { <Drawing sheet={sheet.clone()} at={*at} {step} onstep={onstep.clone()} /> }) }
                    { part(4, &|| html! { <Figures sheet={sheet.clone()} at={replayed} /> }) }
                </div>
                <div class="part replay-part">
                    { part(6, &|| html! { <Section sheet={sheet.clone()} at={replayed} /> }) }
                    { part(7, &|| html! { <LadderView sheet={sheet.clone()} at={live} told={rested} /> }) }
                </div>
                <div class="part look-part">
                    { part(5, &|| html! { <Inspector sheet={sheet.clone()} {step} onstep={onstep.clone()} onfrom={props.onfrom.clone()} /> }) }
                </div>
                <div class="part verdict-part">
                    { part(9, &|| html! { <VerdictCard sheet={sheet.clone()} /> }) }
                </div>
                <div class="part steps-part">
                    { part(10, &|| html! { <Steps sheet={sheet.clone()} {step} onstep={to_inside.clone()} /> }) }
                </div>
                <div class="part report-part">{ part(11, &|| props.children.clone()) }</div>
            </div>
            { part(3, &|| html! { <Strip sheet={sheet.clone()} at={*at} onat={onat.clone()} {shown} /> }) }
            <DebriefTabs tab={*tab} {ontab} />
            { part(PARTS, &|| html! { <Report sheet={sheet.clone()} /> }) }
        </>
    }
}

/// Who is told that the job is moved along, that a step is chosen, that one is chosen to look inside, that a section is.
type Told = (Callback<usize>, Callback<u32>, Callback<u32>, Callback<Tab>);

fn told((at, tab, sheet): &(UseStateSetter<usize>, UseStateSetter<Tab>, Rc<Sheet>)) -> Told {
    let onat = Callback::from({
        let at = at.clone();
        move |to| at.set(to)
    });
    let onstep = Callback::from({
        let (at, sheet) = (at.clone(), sheet.clone());
        move |number| at.set(sheet.picture.after(number))
    });
    let to_inside = Callback::from({
        let (onstep, tab) = (onstep.clone(), tab.clone());
        move |number| {
            onstep.emit(number);
            tab.set(Tab::Inside);
        }
    });
    let ontab = Callback::from({
        let tab = tab.clone();
        move |one| tab.set(one)
    });
    (onat, onstep, to_inside, ontab)
}
