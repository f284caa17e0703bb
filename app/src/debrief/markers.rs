//! The lettered moments above the drawing, and the line down from each.

use std::rc::Rc;

use yew::prelude::*;

use super::drawing::clock;
use super::scale::Axis;
use super::sheet::{Sheet, Step};
use super::svg::spread;
use crate::said::use_voice;

/// Radius of a marker.
const RADIUS: f64 = 9.0;
/// Markers keep this distance; a bent line leads from each to its moment.
const APART: f64 = 20.0;

/// Where they are drawn.
#[derive(Properties, PartialEq)]
pub struct Props {
    /// The job.
    pub sheet: Rc<Sheet>,
    /// Time.
    pub axis: Axis,
    /// Top of the picture under them.
    pub top: f64,
    /// End of the lines.
    pub bottom: f64,
    /// The chosen step.
    pub step: u32,
    /// Only the chosen one is drawn.
    pub narrow: bool,
    /// Told a step to look at.
    pub onstep: Callback<u32>,
}

/// The markers. Each is a button; the list of steps has the same ones, larger.
#[component]
pub fn Markers(props: &Props) -> Html {
    let voice = use_voice();
    let shown = |step: &&Step| step.number == props.step || (step.marked && !props.narrow);
    let mut steps: Vec<&Step> = props.sheet.steps.iter().filter(shown).collect();
    let room = ((props.axis.right - props.axis.left) / APART).floor() as usize;
    if steps.len() > room {
        // The list has them all; here those stay that cost most.
        let weight = |step: &&Step| {
            let lost: f64 = props.sheet.lines_of(step.number).map(|line| line.points).sum();
            (step.number != props.step, !step.grave, (lost * 10.0) as i32)
        };
        quantity::sort::sort_by_key(&mut steps, weight);
        steps.truncate(room);
        quantity::sort::sort_by_key(&mut steps, |step| step.number);
    }
    let at: Vec<f64> = steps.iter().map(|step| props.axis.x(step.at)).collect();
    let places = spread(&at, props.axis.left, props.axis.right, APART);
    let all = steps.iter().zip(at).zip(places).map(|((step, at), place)| marker(props, step, at, place));
    html! { <g class="markers" aria-label={voice.text("debrief-moments")} role="group">{ for all }</g> }
}

fn marker(props: &Props, step: &Step, at: f64, place: f64) -> Html {
    let chosen = step.number == props.step;
    let choose = {
        let (told, number) = (props.onstep.clone(), step.number);
        Callback::from(move |()| told.emit(number))
    };
    let onclick = choose.reform(|_: MouseEvent| ());
    let onkeydown = Callback::from(move |event: KeyboardEvent| {
        if matches!(event.key().as_str(), "Enter" | " ") {
            event.prevent_default();
            choose.emit(());
        }
    });
    let letter = &step.letter;
    let said = format!("{letter} {} {}", clock(&props.sheet, step.at), step.what);
    let class = classes!("marker", chosen.then_some("chosen"), step.grave.then_some("grave"));
    let y = RADIUS + 3.0;
    let line = format!("M{place:.1} {:.1}L{at:.1} {:.1}V{:.1}", y + RADIUS, props.top, props.bottom);
    let x = format!("{place:.1}");
    html! {
        <g {class} role="button" tabindex="0" aria-label={said} aria-pressed={chosen.to_string()} {onclick} {onkeydown}>
            <path d={line} />
            <circle cx={x.clone()} cy={y.to_string()} r={RADIUS.to_string()} />
            <text {x} y={(y + 4.0).to_string()}>{ letter }</text>
        </g>
    }
}
