//! The drawing of a job over one axis: water in the tank from top to bottom, temperatures, heat, currents.

use std::rc::Rc;

use gloo::timers::callback::Timeout;
use quantity::Seconds;
use wasm_bindgen::JsCast;
use wasm_bindgen::closure::Closure;
use web_sys::{HtmlElement, ResizeObserver};
use words::Units::Si;
use yew::prelude::*;

use super::markers::Markers;
use super::plot::{Of, Plot};
use super::scale::Axis;
use super::sheet::Sheet;
use super::strip::LETTER;
use super::svg::stroke;
use super::water::Water;
use crate::said::use_voice;
use crate::shell::use_frames;
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
    /// The step whose marker is the chosen one.
    pub step: u32,
    /// Told a step to look at.
    pub onstep: Callback<u32>,
}

/// The drawing, as wide as the page lets it be, its letters always of reading size.
#[component]
pub fn Drawing(props: &Props) -> Html {
    let voice = use_voice();
    let frame = use_node_ref();
    let measured = use_width(&frame);
    let width = measured.unwrap_or(AT_FIRST);
    // The water first, then the plots: all in one frame would be a long one.
    let layers = use_frames(if measured.is_some() { 2 } else { 0 });
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
    let area = format!("0 0 {width:.0} {height:.0}");
    let said = voice.filled("debrief-drawing", &[("steps", (sheet.steps.len() as u32).into())]);
    let now = sheet.picture.samples.get(props.at);
    html! {
        <div class="film" ref={frame}>
            <svg viewBox={area.clone()} width={format!("{width:.0}")} height={format!("{height:.0}")} role="group" aria-label={said}>
                if layers > 0 {
                    <Water sheet={sheet.clone()} {axis} top={MARKERS} height={WATER} />
                    <Markers sheet={sheet.clone()} {axis} top={MARKERS} {bottom} step={props.step} {narrow} onstep={props.onstep.clone()} />
                }
                if layers > 1 {
                    { plots }
                    { time_axis(&axis, bottom + 18.0) }
                }
            </svg>
            // By itself, so that nothing else is laid out and drawn again as it moves.
            <svg class="over" viewBox={area} aria-hidden="true">
                if let Some(now) = now.filter(|_| measured.is_some()) {
                    { stroke("cursor", format!("M{:.1} {MARKERS}V{bottom:.1}", axis.x(now.at))) }
                }
            </svg>
        </div>
    }
}

fn time_axis(axis: &Axis, y: f64) -> Html {
    // The day of the tick before, and where its words end.
    let mut before = (Si.day(axis.starts_at), 0.0);
    axis.ticks()
        .into_iter()
        .map(|(x, time)| {
            // The first and the last would run out of the sheet when centred.
            let x = x.clamp(axis.left + 2.0, axis.right - 14.0);
            let day = Si.day(time);
            let half = |said: &String| said.chars().count() as f64 * LETTER / 2.0;
            let named = units::clock(time);
            let fits = day > before.0 && x - half(&named) > before.1;
            let said = if fits { named } else { Si.clock(time) };
            before = (day, x + half(&said));
            html! { <text class="ax mid" x={format!("{x:.1}")} y={format!("{y:.1}")}>{ said }</text> }
        })
        .collect()
}

/// The width of the frame, followed as it changes; nothing until the page has laid it out, so that no drawing is made
/// twice, and where it does not show it.
#[hook]
pub fn use_width(frame: &NodeRef) -> Option<f64> {
    let width = use_state_eq(|| None);
    let (frame, set) = (frame.clone(), width.setter());
    use_effect_with((), move |()| {
        let frame = frame.cast::<HtmlElement>();
        let watched = frame.clone();
        // Told right after the page was laid out: asking for it at any other time would have it laid out once more.
        let seen = Closure::<dyn Fn()>::new(move || {
            let wide = watched.as_ref().map_or(0, |frame| frame.client_width());
            if wide > 0 {
                let set = set.clone();
                Timeout::new(0, move || set.set(Some(f64::from(wide).max(LEAST)))).forget();
            }
        });
        let observer = ResizeObserver::new(seen.as_ref().unchecked_ref()).ok();
        if let Some((observer, frame)) = observer.as_ref().zip(frame) {
            observer.observe(&frame);
        }
        move || {
            if let Some(observer) = observer {
                observer.disconnect();
            }
            drop(seen);
        }
    });
    *width
}

/// A time of day.
pub fn clock(sheet: &Sheet, at: Seconds) -> String {
    units::clock(sheet.starts_at + at)
}
