//! Current of the branch cable's legs over time.

use std::rc::Rc;

use yew::prelude::*;

use super::scale::Axis;
use super::sheet::Sheet;
use crate::said::use_voice;

/// Where it is drawn.
#[derive(Properties, PartialEq)]
pub struct Props {
    /// The job.
    pub sheet: Rc<Sheet>,
    /// Time.
    pub axis: Axis,
    /// Top edge.
    pub top: f64,
    /// Height.
    pub height: f64,
}

/// The two curves.
#[component]
pub fn Current(props: &Props) -> Html {
    let voice = use_voice();
    let Props { sheet, axis, top, height } = props;
    let peak =
        sheet.picture.samples.iter().flat_map(|frame| frame.legs).map(|amps| amps.get()).fold(0.0, f64::max);
    let full = [10.0, 20.0, 30.0, 50.0, 100.0].into_iter().find(|full| peak <= *full).unwrap_or(peak);
    let y = |amps: f64| top + height - amps / full * height;
    let curve = |leg: usize| {
        let mut points = String::new();
        let mut before: Option<f64> = None;
        for frame in &sheet.picture.samples {
            let (x, here) = (axis.x(frame.at), y(frame.legs.get(leg).map_or(0.0, |amps| amps.get())));
            let start = if before.is_none() { 'M' } else { 'L' };
            // A switch is a step, not a slope.
            if let Some(before) = before.filter(|before| (before - here).abs() > 0.5) {
                points.push_str(&format!("L{x:.1} {before:.1}"));
            }
            points.push_str(&format!("{start}{x:.1} {here:.1}"));
            before = Some(here);
        }
        points
    };
    let line = |amps: f64| {
        let at = format!("{:.1}", y(amps));
        html! {
            <>
                <line class="rule" x1={axis.left.to_string()} x2={axis.right.to_string()} y1={at.clone()} y2={at} />
                <text class="ax end" x={format!("{:.1}", axis.left - 7.0)} y={format!("{:.1}", y(amps) + 4.0)}>{ format!("{amps:.0} A") }</text>
            </>
        }
    };
    html! {
        <g class="current">
            { line(full) }{ line(0.0) }
            <path class="leg-1" d={curve(0)} />
            <path class="leg-2" d={curve(1)} />
            <text class="ax" x={axis.left.to_string()} y={format!("{:.1}", top - 6.0)}>{ voice.text("debrief-current") }</text>
        </g>
    }
}
