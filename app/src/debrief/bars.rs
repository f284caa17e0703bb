//! How the time was spent, as one bar.

use std::rc::Rc;

use yew::prelude::*;

use super::phase::phase_name;
use super::scale::Axis;
use super::sheet::Sheet;
use crate::said::use_voice;

/// Height of the bar.
const BAR: f64 = 26.0;
/// Width of a letter of its labels, about.
const LETTER: f64 = 6.4;

/// Where it is drawn.
#[derive(Properties, PartialEq)]
pub struct Props {
    /// The job.
    pub sheet: Rc<Sheet>,
    /// Time.
    pub axis: Axis,
    /// Top edge.
    pub top: f64,
    /// The chosen step.
    pub step: u32,
}

/// The bar. A stretch's name is drawn where it has room; every stretch tells it when pointed at.
#[component]
pub fn Bars(props: &Props) -> Html {
    let voice = use_voice();
    let Props { sheet, axis, top, step } = props;
    let total = voice.filled("page-minutes", &[("minutes", sheet.length().to_minutes().round().into())]);
    let bar = top + 22.0;
    let stretches = sheet.stretches.iter().map(|one| {
        let (x, end) = (axis.x(one.from), axis.x(one.to));
        let wide = (end - x - 1.0).max(0.8);
        let name = voice.text(&format!("debrief-phase-{}", phase_name(one.phase)));
        let fits = name.chars().count() as f64 * LETTER + 10.0 < wide;
        let here = (one.steps.0..=one.steps.1).contains(step);
        html! {
            <g class={classes!("stretch", phase_name(one.phase), here.then_some("here"))}>
                <title>{ format!("{name}, {}", voice.units().duration(one.to - one.from)) }</title>
                <rect x={format!("{x:.1}")} y={bar.to_string()} width={format!("{wide:.1}")} height={BAR.to_string()} />
                if fits {
                    <text class="ax" x={format!("{:.1}", x + 6.0)} y={format!("{:.1}", bar + 17.5)}>{ name }</text>
                }
            </g>
        }
    });
    html! {
        <g class="bars">
            <text class="lab" x={axis.left.to_string()} y={format!("{:.1}", top + 14.0)}>{ voice.text("debrief-your-way") }</text>
            <text class="ax end" x={axis.right.to_string()} y={format!("{:.1}", top + 14.0)}>{ total }</text>
            { for stretches }
        </g>
    }
}
