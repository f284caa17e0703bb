//! The drawing of a job over one axis: water in the tank from top to bottom, temperatures, heat, currents.

use std::rc::Rc;

use gloo::events::EventListener;
use gloo::render::request_animation_frame;
use gloo::timers::callback::Timeout;
use quantity::Seconds;
use web_sys::HtmlElement;
use yew::prelude::*;

use super::markers::Markers;
use super::plot::{Of, Plot};
use super::scale::Axis;
use super::sheet::Sheet;
use super::svg::stroke;
use super::water::Water;
use crate::said::use_voice;
use crate::units;

/// Narrower than this, markers stand too close to be aimed at: only the chosen one is drawn.
const NARROW: f64 = 600.0;
/// Of the empty frame, until the page has been laid out.
const AT_FIRST: f64 = 900.0;
/// No drawing is narrower.
const LEAST: f64 = 240.0;
/// Height of the markers, of a caption over a plot, of the time axis.
const MARKERS: f64 = 40.0;
const CAPTION: f64 = 32.0;
const TIME: f64 = 24.0;
/// Height of the tank, and of each plot.
const WATER: f64 = 170.0;
const PLOTS: [(Of, f64); 3] = [(Of::Temperatures, 132.0), (Of::Heat, 44.0), (Of::Current, 44.0)];
/// Room for the names of the levels.
const LEVELS: f64 = 64.0;
/// Room for the names at the ends of the lines.
const NAMES: f64 = 70.0;

/// The job and the moment that is looked at.
#[derive(Properties, PartialEq)]
pub struct Props {
    /// The job.
    pub sheet: Rc<Sheet>,
    /// The chosen sample.
    pub at: usize,
    /// The page shows this section: where sections change places, it is laid out only then.
    pub shown: bool,
    /// Told a step to look at.
    pub onstep: Callback<u32>,
}

/// The drawing, as wide as the page lets it be, its letters always of reading size.
#[component]
pub fn Drawing(props: &Props) -> Html {
    let voice = use_voice();
    let frame = use_node_ref();
    let measured = use_width(&frame, props.shown);
    let width = measured.unwrap_or(AT_FIRST);
    let narrow = width < NARROW;
    let axis = Axis {
        left: LEVELS,
        right: width - NAMES,
        length: props.sheet.length(),
        starts_at: props.sheet.starts_at,
    };
    let sheet = &props.sheet;
    let mut bottom = MARKERS + WATER + 16.0;
    let plots: Html = PLOTS
        .into_iter()
        .map(|(of, height)| {
            let top = bottom + CAPTION;
            bottom = top + height;
            html! { <Plot sheet={sheet.clone()} {of} {axis} {top} {height} /> }
        })
        .collect();
    let height = bottom + TIME;
    let said = voice.filled("debrief-drawing", &[("steps", (sheet.steps.len() as u32).into())]);
    let now = sheet.picture.samples.get(props.at);
    let step = now.map_or(0, |one| one.step);
    html! {
        <div class="film" ref={frame}>
            <svg viewBox={format!("0 0 {width:.0} {height:.0}")} width={format!("{width:.0}")} height={format!("{height:.0}")} role="group" aria-label={said}>
                if measured.is_some() {
                    <Water sheet={sheet.clone()} {axis} top={MARKERS} height={WATER} />
                    <Markers sheet={sheet.clone()} {axis} top={MARKERS} {bottom} {step} {narrow} onstep={props.onstep.clone()} />
                    { plots }
                    { time_axis(&axis, bottom + 18.0) }
                    if let Some(now) = now {
                        { stroke("cursor", format!("M{:.1} {MARKERS}V{bottom:.1}", axis.x(now.at))) }
                    }
                }
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

/// The width of the frame, followed while the window changes and whenever `again` does; nothing until it has been laid
/// out, so that no drawing is made twice.
#[hook]
pub fn use_width<T: PartialEq + 'static>(frame: &NodeRef, again: T) -> Option<f64> {
    let width = use_state_eq(|| None);
    let (frame, set) = (frame.clone(), width.setter());
    use_effect_with(again, move |_| {
        let measure = Rc::new(move || {
            if let Some(frame) = frame.cast::<HtmlElement>().filter(|frame| frame.client_width() > 0) {
                set.set(Some(f64::from(frame.client_width()).max(LEAST)));
            }
        });
        // Right after the frame, which has laid it out.
        let first = request_animation_frame({
            let measure = measure.clone();
            move |_| drop(Timeout::new(0, move || measure()).forget())
        });
        let listener = EventListener::new(&gloo::utils::window(), "resize", move |_| measure());
        move || drop((first, listener))
    });
    *width
}

/// A time of day.
pub fn clock(sheet: &Sheet, at: Seconds) -> String {
    units::clock(sheet.starts_at + at)
}
