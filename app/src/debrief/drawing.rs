//! The drawing of a job: water in the tank from top to bottom, current in the legs, time spent, over one axis.

use std::rc::Rc;

use gloo::events::EventListener;
use quantity::Seconds;
use web_sys::HtmlElement;
use yew::prelude::*;

use super::bars::Bars;
use super::current::Current;
use super::markers::Markers;
use super::scale::Axis;
use super::sheet::Sheet;
use super::water::Water;
use crate::said::use_voice;
use crate::units;

/// Narrower than this, markers stand too close to be aimed at: only the chosen one is drawn.
const NARROW: f64 = 600.0;
/// Until the page has been laid out.
const AT_FIRST: f64 = 900.0;
/// Heights: markers, tank, gap with its caption, current, gap, bars with their title, time axis.
const MARKERS: f64 = 40.0;
const WATER: f64 = 190.0;
const GAP: f64 = 40.0;
const CURRENT: f64 = 60.0;
const BARS: f64 = 62.0;
const AXIS: f64 = 24.0;

/// The job and the step that is looked at.
#[derive(Properties, PartialEq)]
pub struct Props {
    /// The job.
    pub sheet: Rc<Sheet>,
    /// The chosen step.
    pub step: u32,
    /// Told a step to look at.
    pub onstep: Callback<u32>,
}

/// The drawing, as wide as the page lets it be, its letters always of reading size.
#[component]
pub fn Drawing(props: &Props) -> Html {
    let voice = use_voice();
    let frame = use_node_ref();
    let width = use_width(&frame);
    let narrow = width < NARROW;
    let axis = Axis {
        left: if narrow { 44.0 } else { 62.0 },
        right: width - if narrow { 6.0 } else { 18.0 },
        length: props.sheet.length(),
        starts_at: props.sheet.starts_at,
    };
    let current = MARKERS + WATER + GAP;
    let times = current + CURRENT + AXIS;
    let height = times + BARS;
    let said = voice.filled("debrief-drawing", &[("steps", (props.sheet.steps.len() as u32).into())]);
    let sheet = &props.sheet;
    html! {
        <div class="film" ref={frame}>
            <svg viewBox={format!("0 0 {width:.0} {height:.0}")} width={format!("{width:.0}")} height={format!("{height:.0}")} role="group" aria-label={said}>
                <Water sheet={sheet.clone()} {axis} top={MARKERS} height={WATER} />
                <Current sheet={sheet.clone()} {axis} top={current} height={CURRENT} />
                { time_axis(&axis, current + CURRENT + 16.0) }
                <Bars sheet={sheet.clone()} {axis} top={times} step={props.step} />
                <Markers sheet={sheet.clone()} {axis} top={MARKERS} bottom={current + CURRENT} step={props.step} {narrow} onstep={props.onstep.clone()} />
            </svg>
        </div>
    }
}

fn time_axis(axis: &Axis, y: f64) -> Html {
    axis.ticks()
        .into_iter()
        .map(|(x, time)| {
            // The first and the last would run out of the sheet when centred.
            let x = x.clamp(axis.left + 2.0, axis.right - 14.0);
            html! { <text class="ax mid" x={format!("{x:.1}")} y={format!("{y:.1}")}>{ units::clock(time) }</text> }
        })
        .collect()
}

/// The width of the frame, followed while the window changes.
#[hook]
fn use_width(frame: &NodeRef) -> f64 {
    let width = use_state(|| AT_FIRST);
    let (frame, set) = (frame.clone(), width.setter());
    use_effect_with((), move |()| {
        let measure = move || {
            if let Some(frame) = frame.cast::<HtmlElement>().filter(|frame| frame.client_width() > 0) {
                set.set(f64::from(frame.client_width()));
            }
        };
        measure();
        let listener = EventListener::new(&gloo::utils::window(), "resize", move |_| measure());
        move || drop(listener)
    });
    (*width).max(240.0)
}

/// A time of day.
pub fn clock(sheet: &Sheet, at: Seconds) -> String {
    units::clock(sheet.starts_at + at)
}
